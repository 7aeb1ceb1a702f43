namespace TreadmillMech.Model;

/// <summary>One output of the model.</summary>
/// <param name="Name">Name; also the name of its field in <see cref="OutputNumbers{T}"/>.</param>
/// <param name="Symbol">Symbol in the formulas.</param>
/// <param name="Unit">SI unit; "1" for a plain number.</param>
/// <param name="Description">What it is.</param>
public sealed record Output(string Name, string Symbol, string Unit, string Description)
{
    /// <summary>Place in the table and in <see cref="OutputNumbers{T}"/>, from 0.</summary>
    public int Index { get; internal init; }

    /// <summary>This output alone in a set of outputs.</summary>
    internal ulong Bit => 1UL << Index;

    /// <summary>Inputs often unknown in the field, without any of which this output cannot be given, as bits.</summary>
    internal ulong Needs { get; init; }

    /// <summary>Name, unit and meaning.</summary>
    public override string ToString() => $"{Name} [{Unit}]: {Description}";
}
