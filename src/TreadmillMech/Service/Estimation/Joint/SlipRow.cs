using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A test for slip under the test demand: the least margin of one contact or of both against 1, in logarithms.</summary>
internal sealed class SlipRow(
    int happened,
    string name,
    ModelCase model,
    bool slipped,
    (bool RunningBelt, bool DriveBelt) contacts,
    double spread
) : VisitRow(happened, name, "", 0, model.Unknowns)
{
    internal override bool PassFail => true;

    internal override bool Ambiguous => contacts.RunningBelt && contacts.DriveBelt;

    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at)
    {
        OutputNumbers<Dual<Lanes>> point = model.Run(at);
        Dual<Lanes> belt = Probit.LogMargin(point.BeltMargin) * (1 / spread);
        Dual<Lanes> drive = Probit.LogMargin(point.DriveBeltMargin) * (1 / spread);
        Dual<Lanes> holds = contacts switch
        {
            (true, true) => Probit.Both(belt, drive),
            (true, false) => Probit.Within(belt),
            _ => Probit.Within(drive),
        };
        return slipped ? -holds : holds;
    }

    internal override Lanes LogLikelihood(ReadOnlySpan<Lanes> at, double uncertainty)
    {
        OutputNumbers<Lanes> point = model.Run(at);
        Lanes belt = Probit.LogMargin(point.BeltMargin) * (1 / spread);
        Lanes drive = Probit.LogMargin(point.DriveBeltMargin) * (1 / spread);
        return contacts switch
        {
            (true, true) when slipped => Probit.LogOneFails(belt, drive),
            (true, true) => Probit.LogProbabilities(belt) + Probit.LogProbabilities(drive),
            (true, false) => Probit.LogProbabilities(slipped ? -belt : belt),
            _ => Probit.LogProbabilities(slipped ? -drive : drive),
        };
    }

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => 1;
}
