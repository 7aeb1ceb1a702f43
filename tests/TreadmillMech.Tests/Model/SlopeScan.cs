using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>
/// Derivatives of what is taken at a worst phase, against differences of a dense scan that looks for the phase anew on
/// both sides. Machines with two humps of nearly the same height are left out: there the derivative is one-sided.
/// </summary>
internal static class SlopeScan
{
    private const int Machines = 150;

    // Of ten thousand slopes the worst was 2e-8 apart, most of it the scan's.
    private const double Allowed = 5e-8;

    internal static void Compare(
        Output output,
        Func<PlainStride, int, (double Value, double Time)> scan,
        double stepShare = 1e-4,
        double allowed = Allowed
    )
    {
        Random random = new(5);
        int checkedSlopes = 0;
        List<string> failures = [];
        for (int i = 0; i < Machines; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random);
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            foreach (Input input in Inputs.All)
            {
                double at = x.AsSpan()[input.Index];
                double step = stepShare * (at == 0 ? 1e-2 : Math.Abs(at));
                bool zeroIsAnEnd = at == 0 && input != Inputs.Incline && input != Inputs.RailForce;
                if (zeroIsAnEnd || (input == Inputs.BeltSpeed && Math.Abs(at - 2) < 0.01))
                {
                    continue;
                }

                (double Value, double Time)[] around = [.. Shifted(x, kinds, input, step).Select(s => scan(s, 100))];
                if (around.Max(a => a.Time) - around.Min(a => a.Time) > 0.01)
                {
                    continue;
                }

                // Five-point rule: the error goes with the fourth power of the step.
                double expected =
                    (around[0].Value - (8 * around[1].Value) + (8 * around[2].Value) - around[3].Value) / (12 * step);
                MachineNumbers<Dual<Real>> lifted = x.Lift<Dual<Real>>();
                lifted.AsSpan()[input.Index] = Dual<Real>.Variable(at);
                OperatingPointModel.Run(in lifted, in kinds, out OutputNumbers<Dual<Real>> y);
                Dual<Real> found = y.AsSpan()[output.Index];
                double scale = Math.Abs(expected) + (1e-3 * Math.Abs(around[1].Value) / (step / stepShare));
                if (!(Math.Abs(found.Slope - expected) <= allowed * scale))
                {
                    failures.Add($"machine {i}, {input.Name} = {at:R}: {found.Slope} against {expected:R}, {kinds}");
                }

                checkedSlopes++;
            }
        }

        Assert.True(
            failures.Count == 0,
            $"{failures.Count} of {checkedSlopes}\n{string.Join('\n', failures.Take(30))}"
        );
        Assert.True(checkedSlopes > 30 * Machines, $"Only {checkedSlopes} slopes were away from ties.");
    }

    private static IEnumerable<PlainStride> Shifted(
        MachineNumbers<Real> x,
        MachineKinds kinds,
        Input input,
        double step
    )
    {
        foreach (int places in (int[])[-2, -1, 1, 2])
        {
            MachineNumbers<Real> moved = x;
            moved.AsSpan()[input.Index] += places * step;
            yield return new(moved, kinds);
        }
    }
}
