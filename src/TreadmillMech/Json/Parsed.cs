using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace TreadmillMech.Json;

/// <summary>What was read out of a text, or all that is wrong with it.</summary>
/// <typeparam name="T">What is read.</typeparam>
/// <remarks>A file that cannot be taken is a normal outcome, not an error: nothing is thrown for what a user wrote.</remarks>
public sealed record Parsed<T>
    where T : class
{
    private readonly T? value;

    internal Parsed(T? value, ImmutableArray<FileProblem> problems)
    {
        this.value = problems.IsEmpty ? value : null;
        Problems = problems;
    }

    /// <summary>Whether the text was taken as a whole.</summary>
    public bool Found => value is not null;

    /// <summary>What was read.</summary>
    /// <exception cref="InvalidOperationException">The text was refused; the message says why.</exception>
    public T Value => value ?? throw new InvalidOperationException(string.Join('\n', Problems));

    /// <summary>All that is wrong, in the order of the text; empty where it was taken.</summary>
    public ImmutableArray<FileProblem> Problems { get; }

    /// <summary>Whether the text was taken, and what was read.</summary>
    /// <param name="read">What was read; null where the text was refused.</param>
    public bool Is([NotNullWhen(true)] out T? read)
    {
        read = value;
        return read is not null;
    }

    /// <summary>The problems in order, one line of text each, safe to print.</summary>
    /// <param name="file">Name of the file.</param>
    /// <param name="most">How many are told; the rest is counted in a last line.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    public IEnumerable<string> Describe(string file, int most = 10)
    {
        ArgumentNullException.ThrowIfNull(file);
        int left = Problems.Length - most;
        return
        [
            .. Problems.Take(most).Select(problem => problem.Describe(file)),
            .. left > 0 ? (string[])[string.Create(CultureInfo.InvariantCulture, $"{left} more not shown.")] : [],
        ];
    }

    /// <summary>What was read, or all that is wrong, a line each.</summary>
    public override string ToString() => value?.ToString() ?? string.Join('\n', Problems);
}
