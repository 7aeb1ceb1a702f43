using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The model gives the same outputs on every number type, for every kind of machine.</summary>
public sealed class NumberTypesAgreeTests
{
    [Fact]
    public void ADualsValueIsThePlainNumberExactly() =>
        EveryKind(
            (kinds, machines, plain) =>
            {
                for (int k = 0; k < machines.Length; k++)
                {
                    MachineNumbers<Dual<Real>> lifted = machines[k].Lift<Dual<Real>>();
                    lifted.BeltSpeed = Dual<Real>.Variable(machines[k].BeltSpeed);
                    OperatingPointModel.Run(in lifted, in kinds, out OutputNumbers<Dual<Real>> y);
                    foreach (Output output in Outputs.All)
                    {
                        Same(kinds, output, plain[k].AsSpan()[output.Index], y.AsSpan()[output.Index].Value, 0);
                    }
                }
            }
        );

    [Fact]
    public void ANestedDualsValueAndSlopeAreThoseOfTheDualExactly() =>
        EveryKind(
            (kinds, machines, plain) =>
            {
                for (int k = 0; k < machines.Length; k++)
                {
                    MachineNumbers<Dual<Real>> once = machines[k].Lift<Dual<Real>>();
                    once.PersonMass = new(machines[k].PersonMass, 1);
                    OperatingPointModel.Run(in once, in kinds, out OutputNumbers<Dual<Real>> first);
                    MachineNumbers<Dual<Dual<Real>>> twice = machines[k].Lift<Dual<Dual<Real>>>();
                    twice.PersonMass = new(new(machines[k].PersonMass, 1), 1);
                    OperatingPointModel.Run(in twice, in kinds, out OutputNumbers<Dual<Dual<Real>>> second);
                    foreach (Output output in Outputs.All)
                    {
                        Dual<Dual<Real>> found = second.AsSpan()[output.Index];
                        Dual<Real> expected = first.AsSpan()[output.Index];
                        Same(kinds, output, plain[k].AsSpan()[output.Index], found.Value.Value, 0);
                        Same(kinds, output, expected.Slope, found.Value.Slope, 1e-12);
                        Same(kinds, output, expected.Slope, found.Slope.Value, 1e-12);
                    }
                }
            }
        );

    // The vector forms of exponential, sine and cosine differ in the last digits.
    [Fact]
    public void EightLanesAreEightPlainNumbers() =>
        EveryKind(
            (kinds, machines, plain) =>
            {
                MachineNumbers<Lanes> x = Side(machines);
                OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Lanes> y);
                foreach (Output output in Outputs.All)
                {
                    for (int k = 0; k < machines.Length; k++)
                    {
                        Same(kinds, output, plain[k].AsSpan()[output.Index], y.AsSpan()[output.Index][k], 1e-9);
                    }
                }
            }
        );

    [Fact]
    public void FourLanesAreHalfOfEightExactly() =>
        EveryKind(
            (kinds, machines, plain) =>
            {
                MachineNumbers<Lanes> side = Side(machines);
                OperatingPointModel.Run(in side, in kinds, out OutputNumbers<Lanes> eight);
                for (int half = 0; half < Lanes.Count; half += FourLanes.Count)
                {
                    MachineNumbers<FourLanes> x = default;
                    for (int i = 0; i < x.AsSpan().Length; i++)
                    {
                        x.AsSpan()[i] = new([.. Enumerable.Range(half, 4).Select(k => machines[k].AsSpan()[i].Value)]);
                    }

                    OperatingPointModel.Run(in x, in kinds, out OutputNumbers<FourLanes> four);
                    foreach (Output output in Outputs.All)
                    {
                        for (int k = 0; k < FourLanes.Count; k++)
                        {
                            double expected = eight.AsSpan()[output.Index][half + k];
                            Same(kinds, output, expected, four.AsSpan()[output.Index][k], 0);
                        }
                    }
                }
            }
        );

    [Fact]
    public void LanesCarryTheSameDerivatives() =>
        EveryKind(
            (kinds, machines, plain) =>
            {
                MachineNumbers<Lanes> side = Side(machines);
                MachineNumbers<Dual<Lanes>> x = default;
                for (int i = 0; i < x.AsSpan().Length; i++)
                {
                    x.AsSpan()[i] = new(side.AsSpan()[i], i == Inputs.RestTension.Index ? 1 : 0);
                }

                OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Dual<Lanes>> y);
                for (int k = 0; k < machines.Length; k++)
                {
                    MachineNumbers<Dual<Real>> one = machines[k].Lift<Dual<Real>>();
                    one.RestTension = new(machines[k].RestTension, 1);
                    OperatingPointModel.Run(in one, in kinds, out OutputNumbers<Dual<Real>> alone);
                    foreach (Output output in Outputs.All)
                    {
                        Dual<Lanes> found = y.AsSpan()[output.Index];
                        Same(kinds, output, plain[k].AsSpan()[output.Index], found.Value[k], 1e-9);
                        Same(kinds, output, alone.AsSpan()[output.Index].Slope, found.Slope[k], 1e-8);
                    }
                }
            }
        );

    internal static void EveryKind(Action<MachineKinds, MachineNumbers<Real>[], OutputNumbers<Real>[]> check)
    {
        Random random = new(11);
        foreach (MachineKinds kinds in RandomMachines.AllKinds)
        {
            MachineNumbers<Real>[] machines = new MachineNumbers<Real>[Lanes.Count];
            OutputNumbers<Real>[] plain = new OutputNumbers<Real>[Lanes.Count];
            for (int k = 0; k < Lanes.Count; k++)
            {
                machines[k] = RandomMachines.Numbers(random, in kinds);
                machines[k].RestTension *= k < 2 ? 0.3 : 1;
                OperatingPointModel.Run(in machines[k], in kinds, out plain[k]);
            }

            check(kinds, machines, plain);
        }
    }

    internal static MachineNumbers<Lanes> Side(MachineNumbers<Real>[] machines)
    {
        MachineNumbers<Lanes> side = default;
        double[] lanes = new double[Lanes.Count];
        for (int i = 0; i < side.AsSpan().Length; i++)
        {
            for (int k = 0; k < Lanes.Count; k++)
            {
                lanes[k] = machines[k].AsSpan()[i];
            }

            side.AsSpan()[i] = new Lanes(lanes);
        }

        return side;
    }

    internal static void Same(in MachineKinds kinds, Output output, double expected, double found, double relative)
    {
        // Zero means bit for bit, also where a machine without a drive belt has an infinite margin.
        bool same = expected.Equals(found) || Math.Abs(found - expected) <= relative * (Math.Abs(expected) + 1e-3);
        Assert.True(same, $"{output.Name} of {kinds}: {expected:R} and {found:R}");
    }
}
