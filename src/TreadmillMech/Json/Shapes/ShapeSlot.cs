namespace TreadmillMech.Json.Shapes;

/// <summary>The place of a required field among those that a part is made of.</summary>
/// <typeparam name="T">Type of its value; only there to keep the types right.</typeparam>
internal sealed record ShapeSlot<T>(int Index);
