using System.Reflection;
using TreadmillMech.Model;
using TreadmillMech.Tests.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Values of any dimension: each quantity there and back, units of the tables, and ranges of the inputs.</summary>
public sealed class PhysicalValueTests
{
    private static readonly HashSet<string> Units =
    [
        .. typeof(Si)
            .GetFields(BindingFlags.Static | BindingFlags.NonPublic)
            .Select(field => field.GetValue(null))
            .Where(value => value?.GetType().Name.StartsWith("Dimension", StringComparison.Ordinal) ?? false)
            .Select(value => (string)value!.GetType().GetProperty("Unit")!.GetValue(value)!)
            .Select(unit => unit.Length == 0 ? "1" : unit),
    ];

    [Fact]
    public void EveryUnitOfTheTablesHasAQuantity()
    {
        Assert.True(Units.Count > 20);
        Assert.All(Inputs.All, input => Assert.Contains(input.Unit, Units));
        Assert.All(Outputs.All, output => Assert.Contains(output.Unit, Units));
    }

    [Fact]
    public void EveryQuantityTurnsIntoAValueAndBack()
    {
        MethodInfo[] conversions =
        [
            .. typeof(PhysicalValue).GetMethods().Where(method => method.Name == "op_Implicit"),
        ];
        Assert.True(conversions.Length >= 25);
        foreach (MethodInfo conversion in conversions)
        {
            Type quantity = conversion.GetParameters()[0].ParameterType;
            object dimension = typeof(Si)
                .GetMethod("Of", BindingFlags.Static | BindingFlags.NonPublic)!
                .MakeGenericMethod(quantity)
                .Invoke(null, null)!;
            Delegate fromSi = (Delegate)dimension.GetType().GetProperty("FromSi")!.GetValue(dimension)!;
            PhysicalValue value = (PhysicalValue)conversion.Invoke(null, [fromSi.DynamicInvoke(2.5)])!;
            Assert.Equal(2.5, value.Si, 1e-12);
            object back = typeof(PhysicalValue).GetMethod("As")!.MakeGenericMethod(quantity).Invoke(value, null)!;
            Assert.Equal(value, (PhysicalValue)conversion.Invoke(null, [back])!);
        }
    }

    [Fact]
    public void AWrongDimensionIsNamed()
    {
        PhysicalValue pull = Force.FromKilonewtons(1.2);
        Assert.Equal("1200 N", $"{pull}");
        Assert.Equal(1200, pull.As<Force>().Newtons);
        InvalidOperationException wrong = Assert.Throws<InvalidOperationException>(() => pull.As<Length>());
        Assert.Equal("1200 N is no Length.", wrong.Message);
        Assert.Throws<InvalidOperationException>(() => pull.As<int>());
    }

    [Fact]
    public void AWholeNumberAndTheDefaultArePlainNumbers()
    {
        PhysicalValue two = 2;
        Assert.Equal(("1", 2.0, "2"), (two.Unit, two.As<double>(), $"{two}"));
        Assert.Equal(200, two.As<Ratio>().Percent);
        Assert.Equal(0, default(PhysicalValue));
        Assert.Equal(PhysicalValue.Of(2, "1"), two);
    }

    [Fact]
    public void AComplianceIsTheReciprocalOfAStiffness()
    {
        Compliance soft = Compliance.FromStiffness(ForcePerLength.FromNewtonsPerMillimeter(500));
        Assert.Equal(2e-6, soft.MetersPerNewton, 1e-20);
        Assert.Equal("2E-06 m/N", $"{soft}");
    }

    // The range of an input is that of the property it is read from, which another list writes down.
    [Theory]
    [InlineData("BeltWidth", "RunningBelt.Width")]
    [InlineData("BeltThickness", "RunningBelt.Thickness")]
    [InlineData("BeltMassPerArea", "RunningBelt.MassPerArea")]
    [InlineData("DriveRollerDiameter", "Roller.Diameter")]
    [InlineData("TailRollerDiameter", "Roller.Diameter")]
    [InlineData("DriveRollerInertia", "Roller.Inertia")]
    [InlineData("TailRollerInertia", "Roller.Inertia")]
    [InlineData("DriveRollerFriction", "Roller.Friction")]
    [InlineData("DeckFriction", "Deck.Friction")]
    [InlineData("BoltAngle", "TakeUp.BoltAngle")]
    [InlineData("LeftTurns", "TakeUp.LeftTurns")]
    [InlineData("RightTurns", "TakeUp.RightTurns")]
    [InlineData("DriveBeltTension", "DriveBelt.Tension")]
    [InlineData("DriveBeltFriction", "DriveBelt.Friction")]
    [InlineData("MotorPulleyDiameter", "DriveBelt.MotorPulleyDiameter")]
    [InlineData("RollerPulleyDiameter", "DriveBelt.RollerPulleyDiameter")]
    [InlineData("PulleyCentreDistance", "DriveBelt.CentreDistance")]
    [InlineData("MotorConstant", "DcMotor.Constant")]
    [InlineData("BrushDrop", "DcMotor.BrushDrop")]
    [InlineData("MotorFrictionTorque", "DcMotor.FrictionTorque")]
    [InlineData("MotorVoltageLimit", "DcMotor.VoltageLimit")]
    [InlineData("MotorCurrentLimit", "DcMotor.CurrentLimit")]
    [InlineData("ControllerEfficiency", "Supply.ControllerEfficiency")]
    [InlineData("StandbyPower", "Supply.StandbyPower")]
    [InlineData("PowerFactor", "Supply.PowerFactor")]
    [InlineData("MainsVoltage", "Supply.Voltage")]
    [InlineData("PersonMass", "Person.Mass")]
    [InlineData("StepFrequency", "Person.Cadence")]
    [InlineData("RailSupport", "Rails.WeightShare")]
    [InlineData("RailForce", "Rails.ForwardForce")]
    public void TheRangeOfAnInputIsThatOfItsPart(string name, string property)
    {
        Input input = Inputs.All.Single(row => row.Name == name);
        PartRange range = PartRanges.All.Single(row => $"{row}" == property);
        string unit = input.Unit == "1" ? "" : $" {input.Unit}";
        string[] ends = range.Range.Split(" to ");
        Assert.Equal(ends[0], FormattableString.Invariant($"{input.Range.From:0.######}{unit}"));
        Assert.Equal(ends[1], FormattableString.Invariant($"{input.Range.To:0.######}{unit}"));
    }
}
