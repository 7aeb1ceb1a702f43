using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>An output names every often unknown input that it depends on: by all others its derivatives are zero.</summary>
public sealed class NeedsTests
{
    private const int Machines = 400;

    private static readonly ulong Optional = Outputs.All.Aggregate(0UL, (all, output) => all | output.Needs);

    [Fact]
    public void AnOutputHasNoSlopeByAnInputThatItDoesNotName() =>
        Derivatives(
            (input, output, slopes) =>
            {
                if ((output.Needs & input.Bit) == 0)
                {
                    Assert.All(slopes, slope => Assert.True(slope == 0, $"{output.Name} by {input.Name}: {slope}"));
                }
            }
        );

    internal static void Derivatives(Action<Input, Output, List<double>> check)
    {
        foreach (Input input in Inputs.All.Where(input => (Optional & input.Bit) != 0))
        {
            Random random = new(7);
            List<double>[] slopes = [.. Outputs.All.Select(_ => new List<double>())];
            for (int i = 0; i < Machines; i++)
            {
                // A fifth of the machines is loose or slippery enough to slide.
                MachineKinds kinds = RandomMachines.Kinds(random);
                MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
                x.RestTension *= i % 5 == 0 ? 0.2 : 1;
                x.DriveBeltTension *= i % 5 == 0 ? 0.2 : 1;
                MachineNumbers<Dual<Real>> lifted = x.Lift<Dual<Real>>();
                lifted.AsSpan()[input.Index] = Dual<Real>.Variable(x.AsSpan()[input.Index]);
                OperatingPointModel.Run(in lifted, in kinds, out OutputNumbers<Dual<Real>> y);
                foreach (Output output in Outputs.All)
                {
                    slopes[output.Index].Add(y.AsSpan()[output.Index].Slope);
                }
            }

            foreach (Output output in Outputs.All)
            {
                check(input, output, slopes[output.Index]);
            }
        }
    }
}
