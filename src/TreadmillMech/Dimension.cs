using System.Globalization;

namespace TreadmillMech;

/// <summary>A dimension: its SI unit, and both ways between a quantity and a plain number in that unit.</summary>
internal sealed record Dimension<TQuantity>(string Unit, Func<TQuantity, double> ToSi, Func<double, TQuantity> FromSi)
    where TQuantity : struct
{
    /// <summary>A plain number with its unit, invariant.</summary>
    internal string Text(double value) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.######}{(Unit.Length == 0 ? "" : " ")}{Unit}");
}
