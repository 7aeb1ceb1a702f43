using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>What the loads of a person off the belt's middle do to its path.</summary>
internal static class OffCentreStage
{
    /// <summary>Stride mean of the drift for each metre of belt, to the side of the person [1].</summary>
    /// <remarks>
    /// The drift is linear in the load, and the belt passes in many strides, so the mean over the stance is taken. Place
    /// and load go together: braking comes early in the ride, push-off late.
    /// </remarks>
    internal static Real Drift(in MachineNumbers<Real> x, in MachineKinds kinds, double offset)
    {
        Workings<Real> work = default;
        OutputNumbers<Real> y = default;
        LoopStage.Run(in x, in kinds, ref work, ref y);
        GaitStage.Run(in x, in kinds, ref work, ref y);
        LoadStage.Run(in x, in kinds, ref work, ref y);
        ref readonly StrideNumbers<Real> stride = ref work.Stride;
        Real sum = 0;
        for (int lobe = 0; lobe < 2; lobe++)
        {
            Real from = lobe == 0 ? 0 : stride.BrakingShare;
            Real length = lobe == 0 ? stride.BrakingShare : 1 - stride.BrakingShare;
            for (int i = 0; i < Stride.NodesAPiece; i++)
            {
                Real phase = from + (length * Stride.Nodes[i]);
                Real load =
                    (stride.NormalLoad * GaitLaws.NormalShape(phase, stride.ThirdHarmonic))
                    + (stride.Braking * GaitLaws.ForeAftShape(phase, stride.BrakingShare));
                Real place = x.StrikePosition + (x.BeltSpeed * y.ContactTime * phase);
                sum +=
                    length
                    * Stride.Weights[i]
                    * TrackingLaws.OffCentreDrift(
                        load * offset,
                        place,
                        x.CentreDistance,
                        y.LoopLength,
                        BeltLaws.BendingStiffnessInPlane(x.BeltStiffness, x.BeltWidth)
                    );
            }
        }

        // Each of two feet is down for the duty factor.
        return 2 * y.DutyFactor * sum;
    }
}
