using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>Checks of what a study is given: thing, value with unit, permitted range.</summary>
internal static class Given
{
    /// <summary>The inputs, one at least, all of one unit and none twice.</summary>
    internal static IReadOnlyList<Input> Together(IReadOnlyList<Input> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        Input[] copy = [.. inputs];
        if (copy.Length == 0)
        {
            throw new ArgumentException($"inputs: there is none. Allowed: {Allowed()}.", nameof(inputs));
        }

        foreach (Input input in copy)
        {
            ArgumentNullException.ThrowIfNull(input, nameof(inputs));
            Row(input);
            if (input.Unit != copy[0].Unit)
            {
                throw new ArgumentException(
                    $"{input.Name} [{input.Unit}] cannot move together with {copy[0].Name} [{copy[0].Unit}].",
                    nameof(inputs)
                );
            }
        }

        return copy.Distinct().Count() == copy.Length
            ? copy
            : throw new ArgumentException("inputs: one of them is there twice.", nameof(inputs));
    }

    /// <summary>An input of the table; a row made elsewhere is refused with the list of those allowed.</summary>
    internal static Input Row(Input input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return input.Index < Inputs.All.Count && Inputs.All[input.Index] == input
            ? input
            : throw new ArgumentException($"{input.Name} is no input. Allowed: {Allowed()}.", nameof(input));
    }

    /// <summary>An output of the table; a row made elsewhere is refused with the list of those allowed.</summary>
    internal static Output Row(Output output)
    {
        ArgumentNullException.ThrowIfNull(output);
        return output.Index < Outputs.All.Count && Outputs.All[output.Index] == output
            ? output
            : throw new ArgumentException(
                $"{output.Name} is no output. Allowed: {string.Join(", ", Outputs.All.Select(row => row.Name))}.",
                nameof(output)
            );
    }

    /// <summary>The number of a value within the range of every input.</summary>
    internal static double Within(IReadOnlyList<Input> inputs, PhysicalValue value, string name)
    {
        foreach (Input input in inputs)
        {
            Within(input, value, name);
        }

        return value.Si;
    }

    /// <summary>The number of a value within the range of an input.</summary>
    internal static double Within(Input input, PhysicalValue value, string name)
    {
        double number = Alike(input.Name, input.Unit, value, name);
        return input.Range.Holds(number)
            ? number
            : throw new ArgumentOutOfRangeException(
                name,
                $"{input.Name}: {value} is outside {input.Range}{(input.Unit == "1" ? "" : " ")}{(input.Unit == "1" ? "" : input.Unit)}."
            );
    }

    /// <summary>The number of a value that must have a unit.</summary>
    internal static double Alike(string thing, string unit, PhysicalValue value, string name) =>
        value.Same(unit)
            ? value.Si
            : throw new ArgumentException($"{thing} is in [{unit}]; {value} is in [{value.Unit}].", name);

    /// <summary>A number of things within bounds.</summary>
    internal static int Count(int value, int from, int to, string name) =>
        value >= from && value <= to
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                string.Create(CultureInfo.InvariantCulture, $"{name}: {value} is outside {from} to {to}.")
            );

    /// <summary>A finite number within bounds.</summary>
    internal static double Number(double value, double from, double to, string name) =>
        value >= from && value <= to
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                string.Create(CultureInfo.InvariantCulture, $"{name}: {value} is outside {from} to {to}.")
            );

    /// <summary>The input of a name; an unknown one is refused with those that are spelt nearly so.</summary>
    internal static Input Input(string name) =>
        Inputs.All.FirstOrDefault(row => row.Name == NotNull(name))
        ?? throw Unknown(name, "input", Inputs.All.Select(row => row.Name));

    /// <summary>The output of a name; an unknown one is refused with those that are spelt nearly so.</summary>
    internal static Output Output(string name) =>
        Outputs.All.FirstOrDefault(row => row.Name == NotNull(name))
        ?? throw Unknown(name, "output", Outputs.All.Select(row => row.Name));

    private static string NotNull(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name;
    }

    private static ArgumentException Unknown(string name, string kind, IEnumerable<string> names)
    {
        string[] near = [.. names.OrderBy(other => Edits(name, other)).Take(3)];
        return new($"{name} is no {kind}. The nearest names: {string.Join(", ", near)}.", nameof(name));
    }

    /// <summary>Letters to change, add or leave out between two words, whatever their case (Levenshtein).</summary>
    private static int Edits(string left, string right)
    {
        int[] row = [.. Enumerable.Range(0, right.Length + 1)];
        foreach (char letter in left)
        {
            int corner = row[0]++;
            for (int i = 0; i < right.Length; i++)
            {
                bool same = char.ToUpperInvariant(letter) == char.ToUpperInvariant(right[i]);
                int changed = corner + (same ? 0 : 1);
                corner = row[i + 1];
                row[i + 1] = Math.Min(changed, 1 + Math.Min(corner, row[i]));
            }
        }

        return row[^1];
    }

    private static string Allowed() => string.Join(", ", Inputs.All.Select(row => row.Name));
}
