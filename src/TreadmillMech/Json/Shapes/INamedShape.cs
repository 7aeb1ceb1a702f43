namespace TreadmillMech.Json.Shapes;

/// <summary>An object that the schema describes once, under a name.</summary>
internal interface INamedShape
{
    /// <summary>Its name in the schema.</summary>
    string Name { get; }

    /// <summary>Its fields, in order.</summary>
    IEnumerable<FormatField> List();

    /// <summary>Writes what the schema says of it.</summary>
    void DescribeObject(SchemaWriter schema);
}
