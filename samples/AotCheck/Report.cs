using System.Globalization;
using TreadmillMech;
using TreadmillMech.Service.Estimation;

namespace AotCheck;

/// <summary>The lines of the report: a name and a number with all its digits, or a name and words.</summary>
internal sealed class Report
{
    private readonly List<string> lines = [];

    internal void Add(string name, double value) =>
        lines.Add($"{name} = {value.ToString("R", CultureInfo.InvariantCulture)}");

    internal void Add(string name, string text) => lines.Add($"{name} = {text}");

    internal void AddAll(string name, IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            Add(name, text);
        }
    }

    internal void Add<T>(string name, Answer<T> answer, Func<T, double> number)
        where T : notnull
    {
        if (answer.Is(out T? value))
        {
            Add(name, number(value));
        }
        else
        {
            Add(name, answer.Missing);
        }
    }

    internal void Add<T>(string name, Answer<Estimate<T>> answer, Func<T, double> number)
        where T : struct
    {
        Add(name, answer, e => number(e.Value));
        Add($"{name} +-", answer, e => number(e.StandardUncertainty));
    }

    internal void Add(string name, Shortfall missing)
    {
        Add(name, missing.ToString());
        if (missing.Unit.Length > 0)
        {
            Add($"{name} needed", missing.Needed);
            Add($"{name} available", missing.Available);
        }
    }

    /// <summary>What an error says; the point is that it is the same error with the same words.</summary>
    internal void AddRefusal(string name, Action action)
    {
        try
        {
            action();
            Add(name, "not refused");
        }
        catch (Exception refusal) when (refusal is ArgumentException or FormatException or InvalidOperationException)
        {
            Add(name, $"{refusal.GetType().Name}: {refusal.Message.ReplaceLineEndings(" ")}");
        }
    }

    internal void Print(TextWriter writer)
    {
        foreach (string line in lines)
        {
            writer.WriteLine(line);
        }
    }
}
