using System.Runtime.CompilerServices;

namespace TreadmillMech.Parts;

/// <summary>Checks of single values, on every path into a part.</summary>
internal static class Guard
{
    /// <summary>The value normalised to its SI unit, or an error that names it, its value and the range.</summary>
    internal static TQuantity Within<TQuantity>(
        TQuantity value,
        Dimension<TQuantity> dimension,
        double from,
        double to,
        [CallerMemberName] string name = ""
    )
        where TQuantity : struct
    {
        double number = dimension.ToSi(value);
        return number >= from && number <= to
            ? dimension.FromSi(number)
            : throw new OutOfRangeException(
                name,
                number,
                new(from, to),
                dimension.Unit,
                $"{name}: {dimension.Text(number)} is outside {dimension.Text(from)} to {dimension.Text(to)}."
            );
    }

    /// <summary>The same for a value that may be unknown.</summary>
    internal static TQuantity? Within<TQuantity>(
        TQuantity? value,
        Dimension<TQuantity> dimension,
        double from,
        double to,
        [CallerMemberName] string name = ""
    )
        where TQuantity : struct => value is { } known ? Within(known, dimension, from, to, name) : null;

    /// <summary>A member of an enumeration, or an error that names it.</summary>
    internal static TKind Defined<TKind>(TKind value, [CallerMemberName] string name = "")
        where TKind : struct, Enum =>
        Enum.IsDefined(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                $"{name}: {value} is none of {string.Join(", ", Enum.GetNames<TKind>())}."
            );

    /// <summary>A part that must be there.</summary>
    internal static TPart Present<TPart>(TPart value, [CallerMemberName] string name = "")
        where TPart : class => value ?? throw new ArgumentNullException(name, $"{name} is required.");
}
