using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation;

/// <summary>The loop under a lift test at a bolt position: its force by tension, stiffness and height.</summary>
internal readonly struct LiftedLoop(LoopGeometry loop, double lengthening, bool locked)
{
    private readonly LoopGeometry loop = loop;

    /// <summary>Force on the bar, tension as before the lengthening [N].</summary>
    internal T Force<T>(T tension, T stiffness, T height)
        where T : struct, IReal<T>
    {
        MachineNumbers<Real> x = loop.Numbers;
        T compliant = BeltLaws.CompliantLength<T>(stiffness, (x.DriveHubCompliance + x.TailHubCompliance).Value);
        T span = loop.Span.Value;
        return LiftLaws.LiftForce(
            tension + Gain(loop, stiffness, lengthening),
            stiffness,
            height,
            span,
            locked ? span : loop.Length.Value + compliant,
            (x.BeltMassPerArea * x.BeltWidth * Gravity.Standard).Value
        );
    }

    /// <summary>Strand tension gained by a lengthening of the loop [N].</summary>
    internal static T Gain<T>(LoopGeometry loop, T stiffness, double lengthening)
        where T : struct, IReal<T>
    {
        MachineNumbers<Real> x = loop.Numbers;
        return BeltLaws.TensionGain<T>(
            stiffness,
            lengthening,
            loop.Length.Value,
            BeltLaws.CompliantLength<T>(stiffness, (x.DriveHubCompliance + x.TailHubCompliance).Value)
        );
    }
}
