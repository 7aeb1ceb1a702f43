using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>Forces of both feet, and the set speed, at a time.</summary>
[SkipLocalsInit]
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
            AddOne(in feet.Last, feet.Tangential, time, ref loads);
        }

        if (T.AnyLess(0, feet.Before.Normal))
        {
            AddOne(in feet.Before, feet.Tangential, time, ref loads);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AddOne<T>(in FootNumbers<T> foot, T tangential, T time, ref LoadNumbers<T> loads)
        where T : struct, IReal<T> => Add(in foot, tangential, time, ref loads);

    /// <summary>The same with the derivatives by time.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void RunWithSlopes<T>(in FeetNumbers<T> feet, T time, out LoadNumbers<Dual<T>> loads)
        where T : struct, IReal<T>
    {
        loads.Normal = Fixed(feet.Standing);
        loads.SharedNormal = Fixed(feet.Standing * feet.StandingShare);
        loads.Along = Fixed(feet.Tangential * feet.Standing);
        loads.SharedAlong = Fixed(feet.Tangential * feet.Standing * feet.StandingShare);
        loads.Jam = Fixed(feet.Jam);
        loads.SharedJam = Fixed(feet.Jam * feet.JamShare);
        loads.SetSpeed = new(feet.SetSpeed + (feet.SetRise * (time - feet.SetFrom)), feet.SetRise);
        loads.On = Fixed(feet.On);
        if (T.AnyLess(0, feet.Last.Normal))
        {
            AddWithSlopes(in feet.Last, feet.Tangential, time, ref loads);
        }

        if (T.AnyLess(0, feet.Before.Normal))
        {
            AddWithSlopes(in feet.Before, feet.Tangential, time, ref loads);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AddWithSlopes<T>(in FootNumbers<T> foot, T tangential, T time, ref LoadNumbers<Dual<T>> loads)
        where T : struct, IReal<T>
    {
        FootNumbers<Dual<T>> lifted;
        lifted.Strike = Fixed(foot.Strike);
        lifted.PerContact = Fixed(foot.PerContact);
        lifted.Normal = Fixed(foot.Normal);
        lifted.ThirdHarmonic = Fixed(foot.ThirdHarmonic);
        lifted.FirstSine = Fixed(foot.FirstSine);
        lifted.SecondSine = Fixed(foot.SecondSine);
        lifted.ThirdSine = Fixed(foot.ThirdSine);
        lifted.FourthSine = Fixed(foot.FourthSine);
        lifted.StrikeShare = Fixed(foot.StrikeShare);
        lifted.RideShare = Fixed(foot.RideShare);
        Add(in lifted, Fixed(tangential), Dual<T>.Variable(time), ref loads);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Dual<T> Fixed<T>(T number)
        where T : struct, IReal<T> => new(number, 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
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
