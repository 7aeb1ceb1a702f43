namespace TreadmillMech.Model;

/// <summary>One input of the model.</summary>
/// <param name="Name">Name; also the name of its field in <see cref="MachineNumbers{T}"/>.</param>
/// <param name="Symbol">Symbol in the formulas.</param>
/// <param name="Unit">SI unit; "1" for a plain number.</param>
/// <param name="Description">What it is.</param>
public sealed record Input(string Name, string Symbol, string Unit, string Description)
{
    /// <summary>Place in the table and in <see cref="MachineNumbers{T}"/>, from 0.</summary>
    public int Index { get; internal init; }

    /// <summary>Values that the parts and the demand permit, in the SI unit; a study does not leave them.</summary>
    public Bounds Range { get; internal init; }

    /// <summary>This input alone in a set of inputs.</summary>
    internal ulong Bit => 1UL << Index;

    /// <summary>Name, unit, permitted range and meaning; invariant.</summary>
    public override string ToString() => $"{Name} [{Unit}], {Range}: {Description}";
}
