using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Mean loads of the running belt on the hubs of both rollers.</summary>
[SkipLocalsInit]
internal static class HubStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(
        in MachineNumbers<T> x,
        in MachineKinds kinds,
        ref Workings<T> work,
        ref OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        T pressing = y.TensionNow - y.CentrifugalTension;
        T slack = TractionLaws.SlackTension(pressing, y.MeanPull, work.MeanSharedPull);
        T tight = TractionLaws.TightTension(pressing, work.MeanSharedPull);
        y.DriveRollerHubLoad = HubLaws.HubLoad(tight, slack, y.DriveRollerWrap);

        // The undriven roller lies in the tight part of the belt with a front drive, in the slack part with a rear drive;
        // its own drag steps the tension by the belt's drag.
        bool rear = kinds.DriveEnd == DriveEnd.Rear;
        T before = rear ? slack : tight - x.BeltDrag;
        y.TailRollerHubLoad = HubLaws.HubLoad(before, before + x.BeltDrag, work.TailWrap);
    }
}
