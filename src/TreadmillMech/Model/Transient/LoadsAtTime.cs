using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>Forces of both feet, and the set speed, at a time.</summary>
internal static class LoadsAtTime
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in FeetNumbers<T> feet, T time, out LoadNumbers<T> loads)
        where T : struct, IReal<T>
    {
        loads.Normal = feet.Standing;
        loads.SharedNormal = feet.Standing * feet.StandingShare;
        loads.Along = feet.Tangential * loads.Normal;
        loads.SharedAlong = feet.Tangential * loads.SharedNormal;
        loads.Jam = feet.Jam;
        loads.SharedJam = feet.Jam * feet.JamShare;
        loads.SetSpeed = feet.SetSpeed + (feet.SetRise * (time - feet.SetFrom));
        loads.On = feet.On;
        if (T.AnyLess(0, feet.Last.Normal))
        {
            Add(in feet.Last, feet.Tangential, time, ref loads);
        }

        if (T.AnyLess(0, feet.Before.Normal))
        {
            Add(in feet.Before, feet.Tangential, time, ref loads);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Add<T>(in FootNumbers<T> foot, T tangential, T time, ref LoadNumbers<T> loads)
        where T : struct, IReal<T>
    {
        T phase = (time - foot.Strike) * foot.PerContact;
        (T sin, T cos) = T.SinCosPi(phase);
        T normal = foot.Normal * GaitLaws.NormalShapeOfSine(sin, foot.ThirdHarmonic);
        T along = ForeAftLaws.SineSum(sin, cos, foot.FirstSine, foot.SecondSine, foot.ThirdSine, foot.FourthSine);
        along += tangential * normal;
        T share = foot.StrikeShare + (foot.RideShare * phase);
        loads.Normal += normal;
        loads.SharedNormal += normal * share;
        loads.Along += along;
        loads.SharedAlong += along * share;
    }
}
