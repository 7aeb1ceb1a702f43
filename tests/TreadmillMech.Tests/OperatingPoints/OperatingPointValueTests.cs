using System.Globalization;
using TreadmillMech.Tests.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>The operating point as a value: equality, texts, the default, and nothing on the heap.</summary>
public sealed class OperatingPointValueTests
{
    private static readonly OperatingPoint Point = Example.Machine.At(Example.Runner);

    [Fact]
    public void EqualMachinesAndDemandsGiveEqualPoints()
    {
        OperatingPoint again = OperatingPoint.Of(Example.Machine with { }, Example.Runner with { });
        Assert.True(Point == again);
        Assert.False(Point != again);
        Assert.Equal((object)Point, again);
        Assert.Equal(Point.GetHashCode(), again.GetHashCode());
        Assert.False(Point.Equals(null));
        Assert.False(Point.Equals("point"));
    }

    [Fact]
    public void AnyDifferenceIsSeen()
    {
        Treadmill machine = Example.Machine;
        Assert.NotEqual(Point, machine.At(Example.Walker));
        Assert.NotEqual(Point, (machine with { RestTension = Force.FromNewtons(1001) }).At(Example.Runner));
        Assert.NotEqual(Point, (machine with { RestTension = null }).At(Example.Runner));
        Assert.NotEqual(
            Point,
            (machine with { Motor = machine.Motor! with { CurrentLimit = ElectricCurrent.FromAmperes(20) } }).At(
                Example.Runner
            )
        );
        Assert.NotEqual(Point, (machine with { Motor = machine.Motor! with { CanBrake = false } }).At(Example.Runner));
    }

    [Fact]
    public void TheTextIsTheSameInEveryCulture()
    {
        string expected = Point.ToString();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = PartEqualityTests.CommaCulture();
            Assert.Equal(expected, Point.ToString());
            Assert.DoesNotContain(",0", Point.ToString(), StringComparison.Ordinal);
            string missing = (Example.Machine with { RestTension = Force.Zero }).At(Example.Runner).ToString();
            Assert.Contains("SlackBelt: TensionNow needs 9.72 N, available 0 N", missing, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void TheTextSaysWhichInputIsUnknown() =>
        Assert.Equal(
            "running belt margin not known (InputUnknown: RestTension), drive belt margin not known (InputUnknown: DeckFriction), mean pull not known (InputUnknown: DeckFriction) N",
            Example.Bare.At(Example.Runner).ToString()
        );

    [Fact]
    public void TheDefaultIsHarmless()
    {
        OperatingPoint nothing = default;
        Assert.Equal(nothing, new OperatingPoint());
        Assert.Equal(Reason.SlackBelt, nothing.BeltMargin.Missing.Why);
        Assert.False(nothing.DriveBeltMargin.Found);
        Assert.True(nothing.Notices.None);
        Assert.Empty(nothing.NoticeTexts);
        Assert.Equal(Length.Zero, nothing.LoopLength);
        Assert.NotEmpty(nothing.ToString());
        Assert.Equal(nothing.GetHashCode(), default(OperatingPoint).GetHashCode());
    }

    [Fact]
    public void OutputsThatRestOnAnUnknownInputAreZeroAmongTheNumbers()
    {
        OperatingPoint point = (Example.Machine with { RestTension = null }).At(Example.Runner);
        Assert.Equal(0, point.Numbers.BeltMargin.Value);
        Assert.Equal(0, point.Numbers.TensionNow.Value);
        Assert.Equal(Point.Numbers.MeanPull, point.Numbers.MeanPull);
    }

    [Fact]
    public void APointAndItsPropertiesLeaveNothingOnTheHeap()
    {
        double sink = 0;
        for (int i = 0; i < 50; i++)
        {
            sink += Everything(OperatingPoint.Of(Example.Machine, Example.Runner));
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 50; i++)
        {
            sink += Everything(OperatingPoint.Of(Example.Machine, Example.Runner));
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sink));
    }

    private static double Everything(OperatingPoint point) =>
        point.LoopLength.Meters
        + point.DriveRollerWrap.Radians
        + point.MeanPull.Value.Newtons
        + point.PeakPull.Value.Newtons
        + point.BeltMargin.Value
        + point.BeltSlide.Value.Meters
        + point.SlackTension.Value.Newtons
        + point.DriveBeltMargin.Value
        + point.DriveRollerHubLoad.Value.Newtons
        + point.MotorHubLoad.Value.Newtons
        + point.MotorTorque.Value.NewtonMeters
        + point.MeanCurrent.Value.Amperes
        + point.MotorVoltage.Value.Volts
        + point.MainsCurrent.Value.Amperes
        + (double)point.FirstToSlip.Value
        + point.Notices.Count;
}
