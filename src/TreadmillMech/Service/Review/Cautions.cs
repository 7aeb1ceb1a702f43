namespace TreadmillMech.Service.Review;

/// <summary>The usual cautions, each said in one way only.</summary>
internal static class Cautions
{
    internal const string Unplug =
        "Switch off and unplug before opening the hood or reaching in; then measure that the controller's capacitors are dead.";

    internal const string StandStill =
        "Turn bolts and clean only while the belt stands still and the machine is unplugged.";

    internal const string Clear = "Keep hands, hair and cloth away from rollers and belt edges while the belt moves.";

    internal const string Key = "Keep the safety key clipped on and in reach.";

    internal const string TestUser =
        "A test under load is for somebody fit for it, never a customer or patient, and never above the plate's mass.";

    internal const string Electrical =
        "Electrical readings are for qualified people, with a meter rated for the circuit.";

    internal const string OnceMended = "Nobody steps on before what takes the machine out of service is mended.";

    internal const string MakerFirst =
        "The maker's manual, local codes and licensed practice come first. This sheet is not a statement of conformity.";
}
