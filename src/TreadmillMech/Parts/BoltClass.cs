namespace TreadmillMech.Parts;

/// <summary>Property class of a steel bolt, stamped on its head.</summary>
public enum BoltClass
{
    /// <summary>Class 4.6.</summary>
    Class4P6 = 0,

    /// <summary>Class 5.8.</summary>
    Class5P8,

    /// <summary>Class 8.8, up to 16 mm.</summary>
    Class8P8,

    /// <summary>Class 10.9.</summary>
    Class10P9,

    /// <summary>Class 12.9.</summary>
    Class12P9,
}
