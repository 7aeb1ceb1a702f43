using TreadmillMech.Model;
using TreadmillMech.Studies;

namespace TreadmillMech.Tests.Studies;

/// <summary>Every study takes every input and every output of the tables: a new row appears in all of them at once.</summary>
public sealed class EveryRowTests
{
    public static TheoryData<string> InputNames => [.. Inputs.All.Select(input => input.Name)];

    public static TheoryData<string> OutputNames => [.. Outputs.All.Select(output => output.Name)];

    [Fact]
    public void OnTheMachineOfTheseTestsEveryInputAndOutputHasAValue()
    {
        Assert.All(Inputs.All, input => Assert.True(Known.Study.Value(input).Found, input.Name));
        Assert.All(Outputs.All, output => Assert.True(Known.Study.Value(output).Found, output.Name));
    }

    [Theory]
    [MemberData(nameof(InputNames))]
    public void ASweepMovesTheInputAndGivesEveryOutput(string name)
    {
        Input input = Named(name);
        double at = Known.Of(input);
        Sweep sweep = Known.Study.Sweep(Axis.Of(input, Known.In(input, Beside(input, at)), Known.In(input, at)));
        Assert.Equal(Outputs.All, sweep.Series.Select(series => series.Output));
        foreach (Series series in sweep.Series)
        {
            Study moved = Known.Study.With(input, sweep.First[0]);
            Assert.Equal(moved.Value(series.Output), series[0]);
            Assert.Equal(Known.Study.Value(series.Output), series[1]);
        }

        // An input that is not read moves nothing: then one of the two tables is wrong. Limits only refuse.
        bool limit = input == Inputs.MotorVoltageLimit || input == Inputs.MotorCurrentLimit;
        bool slides = input == Inputs.DriveRollerInertia || input == Inputs.TailRollerInertia;
        Assert.True(limit || slides || sweep.Series.Any(series => !series.Si[0].Equals(series.Si[1])), name);
    }

    [Theory]
    [MemberData(nameof(InputNames))]
    public void EverySensitivityHasARowForTheInput(string name)
    {
        Input input = Named(name);
        Assert.All(
            Outputs.All,
            output =>
            {
                SensitivityRow row = Known.Study.Sensitivity(output).Value[input];
                Assert.Equal(input, row.Input);
                Assert.True(row.Derivative.Found, $"{output.Name} by {name}: {row.Derivative.Missing}");
            }
        );
    }

    [Theory]
    [MemberData(nameof(InputNames))]
    public void ASolutionForTheInputIsFoundFromAnOutputThatFollowsIt(string name)
    {
        Input input = Named(name);
        double at = Known.Of(input);
        (double from, double to) = Around(input, at);
        int followed = 0;
        foreach (Output output in Outputs.All)
        {
            double wanted = Known.Of(output);
            SensitivityRow row = Known.Study.Sensitivity(output).Value[input];
            if (Math.Abs(row.Derivative.Or(default).Si) * (to - from) < 1e-6 * Math.Abs(wanted))
            {
                continue;
            }

            followed++;
            System.Collections.Immutable.ImmutableArray<Solution> found = Known
                .Study.Solutions(output, Known.In(output, wanted), input, Known.In(input, from), Known.In(input, to))
                .Value;
            Assert.Contains(found, one => Math.Abs(one.Value.Si - at) <= 1e-8 * (to - from));
            Assert.All(found, one => Assert.InRange(one.Value.Si, from, to));
        }

        bool limit = input == Inputs.MotorVoltageLimit || input == Inputs.MotorCurrentLimit;
        bool slides = input == Inputs.DriveRollerInertia || input == Inputs.TailRollerInertia;
        Assert.True(followed > 0 || limit || slides, name);
    }

    [Theory]
    [MemberData(nameof(InputNames))]
    public void EveryUncertaintyTakesTheInput(string name)
    {
        Input input = Named(name);
        double at = Known.Of(input);
        double spread = 1e-4 * (at == 0 ? input.Range.To - input.Range.From : Math.Abs(at));
        UncertainInput uncertain = UncertainInput.Normal(input, Known.In(input, at), Known.In(input, spread));
        foreach (Output output in Outputs.All)
        {
            ComparedUncertainty both = Known
                .Study.Compare(output, [uncertain], seed: 3, new() { Draws = 1000, MostThreads = 1 })
                .Value;
            Assert.Equal(Known.Of(output), both.Propagated.Value.Si);
            Assert.Equal(output.Unit, both.Sampled.Mean.Unit);
            double slope = Known.Study.Sensitivity(output).Value[input].Derivative.Value.Si;
            double expected = Math.Abs(slope) * spread;
            Assert.Equal(expected, both.Propagated.StandardUncertainty.Si, (1e-9 * expected) + 1e-15);
            Assert.Equal(input, both.Propagated.Budget.Single().Input.Input);

            // A thousand draws know a standard deviation to 2.2 %.
            Assert.Equal(
                expected,
                both.Sampled.StandardUncertainty.Si,
                (0.1 * expected) + (1e-9 * Math.Abs(Known.Of(output)))
            );
        }
    }

    [Theory]
    [MemberData(nameof(OutputNames))]
    public void AnOutputByItsRowIsTheOperatingPointsProperty(string name)
    {
        Output output = Outputs.All.Single(row => row.Name == name);
        string property =
            output == Outputs.TensionNow ? "RestTension"
            : name == "StepFrequencyUsed" ? "StepFrequency"
            : name;
        object? value = typeof(OperatingPoint).GetProperty(property)?.GetValue(Known.Study.Point);
        Assert.True(
            value is not null
                || output == Outputs.RmsPull
                || output == Outputs.CentrifugalTension
                || output == Outputs.NoticeBits,
            name
        );
        foreach (Study study in (Study[])(value is null ? [] : [Known.Study, .. Odd]))
        {
            OperatingPoint point = study.Point;
            Answer<double> number = point.Number(output);
            object? typed = typeof(OperatingPoint).GetProperty(property)?.GetValue(point);
            Shortfall missing = typed?.GetType().GetProperty("Missing")?.GetValue(typed) is Shortfall shortfall
                ? shortfall
                : new(Reason.Found, "");
            Assert.Equal(missing, number.Missing);
        }
    }

    // Machines on which answers are missing for every kind of reason.
    private static Study[] Odd =>
        [
            Study.Of(OperatingPoints.Example.Bare, OperatingPoints.Example.Runner),
            Study.Of(OperatingPoints.Example.Machine with { DriveBelt = null }, OperatingPoints.Example.Runner),
            Known.Study.With(Inputs.RestTension, UnitsNet.Force.FromNewtons(50)).With(Inputs.LeftTurns, -3),
            Known.Study.With(Inputs.RestTension, UnitsNet.Force.FromNewtons(250)),
            Known.Study.With(Inputs.MotorVoltageLimit, UnitsNet.ElectricPotential.FromVolts(10)),
            Known.Study.With(Inputs.MotorCurrentLimit, UnitsNet.ElectricCurrent.FromAmperes(0.5)),
            Known.Study.With(Inputs.PulleyCentreDistance, UnitsNet.Length.FromMillimeters(55)),
            Study.Of(
                Known.Machine with
                {
                    Motor = Known.Machine.Motor! with { CanBrake = false },
                },
                Known.Demand with
                {
                    Grade = UnitsNet.Ratio.FromPercent(40),
                }
            ),
            Known
                .Study.With(Inputs.CentreDistance, UnitsNet.Length.FromMeters(0.6))
                .With(Inputs.StrikePosition, UnitsNet.Length.FromMeters(0.8)),
        ];

    private static Input Named(string name) => Inputs.All.Single(input => input.Name == name);

    private static double Beside(Input input, double at)
    {
        (double from, double to) = Around(input, at);
        return to > at ? to : from;
    }

    private static (double From, double To) Around(Input input, double at)
    {
        double reach = 1e-3 * (at == 0 ? input.Range.To - input.Range.From : Math.Abs(at));
        return (Math.Max(input.Range.From, at - reach), Math.Min(input.Range.To, at + reach));
    }
}
