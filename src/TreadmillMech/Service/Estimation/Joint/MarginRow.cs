using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Margin of one of the belts under the test demand; no reading.</summary>
internal sealed class MarginRow(ModelCase model, bool driveBelt) : VisitRow(-1, "", "", 0, model.Unknowns)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => Of(model.Run(at));

    internal override Lanes Values(ReadOnlySpan<Lanes> at) => Of(model.Run(at));

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => 1;

    private T Of<T>(OutputNumbers<T> point)
        where T : struct, IReal<T> => driveBelt ? point.DriveBeltMargin : point.BeltMargin;
}
