namespace TreadmillMech.Json.Located;

/// <summary>What a value in a file is.</summary>
internal enum NodeKind
{
    Object = 0,
    Array,
    Text,
    Number,
    Boolean,
    Null,
}
