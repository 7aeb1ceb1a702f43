namespace TreadmillMech;

/// <summary>What wraps a value and can tell it in few digits.</summary>
internal interface IShortText
{
    /// <summary>The value in few digits, invariant.</summary>
    string Short { get; }
}
