using System.Diagnostics.CodeAnalysis;

namespace TreadmillMech;

/// <summary>A value that was found, or the reason why there is none, with the needed and the available number.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
/// <remarks>
/// A missing answer is a normal outcome, not an error: test with <see cref="Is"/>, or read <see cref="Value"/> where you
/// know that it is there. The default answers nothing: its reason is <see cref="Reason.InputUnknown"/>, about nothing.
/// </remarks>
public readonly struct Answer<T> : IEquatable<Answer<T>>, IShortText
    where T : notnull
{
    private readonly T value;
    private readonly bool found;
    private readonly Shortfall missing;

    private Answer(T value)
    {
        this.value = value;
        found = true;
        missing = new(Reason.Found, "");
    }

    private Answer(Shortfall missing)
    {
        value = default!;
        found = false;
        this.missing = missing;
    }

    /// <summary>Whether there is a value.</summary>
    public bool Found => found;

    /// <summary>Why there is none; <see cref="Reason.Found"/> where there is one.</summary>
    public Shortfall Missing => found || missing.About is not null ? missing : new(Reason.InputUnknown, "");

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message says why.</exception>
    public T Value => found ? value : throw new InvalidOperationException($"No answer. {Missing}.");

    /// <summary>Wraps a value that was found.</summary>
    /// <param name="value">The value.</param>
    public static implicit operator Answer<T>(T value) => new(value);

    /// <summary>Wraps the reason why there is none.</summary>
    /// <param name="missing">The reason.</param>
    public static implicit operator Answer<T>(Shortfall missing) => new(missing);

    /// <summary>Equality of value, or of the reason.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(Answer<T> left, Answer<T> right) => left.Equals(right);

    /// <summary>Inequality of value, or of the reason.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(Answer<T> left, Answer<T> right) => !left.Equals(right);

    /// <summary>Whether there is a value, and the value.</summary>
    /// <param name="answer">The value, or the default where there is none.</param>
    public bool Is([MaybeNullWhen(false)] out T answer)
    {
        answer = value;
        return found;
    }

    /// <summary>The value where there is one, otherwise the one given.</summary>
    /// <param name="otherwise">What to answer where there is none.</param>
    public T Or(T otherwise) => found ? value : otherwise;

    /// <summary>The answer to a further question about the value; a missing answer stays missing for the same reason.</summary>
    /// <typeparam name="TNext">Type of the further answer.</typeparam>
    /// <param name="next">The further question.</param>
    /// <exception cref="ArgumentNullException">The question is null.</exception>
    public Answer<TNext> Then<TNext>(Func<T, TNext> next)
        where TNext : notnull
    {
        ArgumentNullException.ThrowIfNull(next);
        return found ? next(value) : Missing;
    }

    /// <inheritdoc/>
    public bool Equals(Answer<T> other) =>
        found == other.found
        && (found ? EqualityComparer<T>.Default.Equals(value, other.value) : Missing == other.Missing);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Answer<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => found ? HashCode.Combine(value) : Missing.GetHashCode();

    /// <summary>The value in the invariant culture, or the reason why there is none.</summary>
    public override string ToString() => found ? ResultText.Full(value) : Missing.ToString();

    string IShortText.Short => found ? ResultText.Of(value) : Missing.ToString();
}
