using TreadmillMech.Parts;

namespace TreadmillMech.Service.Checks;

/// <summary>Proof stress of the property classes.</summary>
internal static class ProofStress
{
    /// <summary>Proof stress [Pa]: ISO 898-1, 8.8 read there, the others from memory.</summary>
    internal static double Of(BoltClass boltClass) =>
        boltClass switch
        {
            BoltClass.Class4P6 => 225e6,
            BoltClass.Class5P8 => 380e6,
            BoltClass.Class10P9 => 830e6,
            BoltClass.Class12P9 => 970e6,
            _ => 580e6,
        };
}
