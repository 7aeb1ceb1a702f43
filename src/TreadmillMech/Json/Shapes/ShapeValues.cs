namespace TreadmillMech.Json.Shapes;

/// <summary>The values of the required fields, until the part can be made.</summary>
internal sealed class ShapeValues(int count)
{
    private readonly object?[] values = new object?[count];

    internal T Get<T>(ShapeSlot<T> slot) => (T)values[slot.Index]!;

    internal void Set<T>(ShapeSlot<T> slot, T value) => values[slot.Index] = value;
}
