using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Numbers.Integration;
using TreadmillMech.Tests.Model;

namespace TreadmillMech.Tests.Transient;

/// <summary>
/// Slopes put together by the chain rule against the rates themselves on derivatives, direction by direction, for any
/// machine in any state: gripping, sliding, at its limits, at rest, with the key pulled.
/// </summary>
public sealed class ChainRuleTests
{
    // Rounding alone: both ways are exact.
    private const double Agreement = 1e-11;
    private const int Machines = 600;

    [Fact]
    public void AgreesWithDerivativesInEveryDirection()
    {
        Dictionary<string, int> seen = [];
        for (int seed = 0; seed < Machines; seed++)
        {
            Agree(new Random(seed), seed, seen);
        }

        string[] regimes =
        [
            "slips forwards",
            "slips backwards",
            "grips",
            "no tension",
            "current limited",
            "current at least",
            "voltage limited",
            "diode blocks",
            "key pulled",
            "near rest",
            "direct",
        ];
        foreach (string regime in regimes)
        {
            Assert.True(seen.GetValueOrDefault(regime) >= 10, $"{regime}: {seen.GetValueOrDefault(regime)}");
        }
    }

    private static void Agree(Random random, int seed, Dictionary<string, int> seen)
    {
        MachineKinds of = RandomMachines.Kinds(random);
        DriveKinds kinds = new(
            of,
            random.Next(2) == 0,
            (SpeedSensor)random.Next(3),
            random.Next(2) == 0,
            random.Next(2) == 0,
            random.Next(2) == 0,
            random.Next(2) == 0,
            random.Next(2) == 0 && of.Tensioning != Tensioning.DirectDrive
        );
        SlopeTable<Lanes> eight = new(DriveStates.Count, DriveStates.Coupled);
        DriveNumbers<Lanes> numbers = default;
        LoadNumbers<Dual<Lanes>> loads = default;
        Lanes[] states = new Lanes[DriveStates.Count];
        SlopeTable<Real>[] single = new SlopeTable<Real>[8];
        for (int lane = 0; lane < single.Length; lane++)
        {
            DriveNumbers<Real> x = Numbers(random, in of, in kinds);
            LoadNumbers<Dual<Real>> load = Loads(random);
            Real[] state = State(random, in x);
            single[lane] = new(DriveStates.Count, DriveStates.Coupled);
            DriveSlopes.Run(in x, in kinds, in load, state, in single[lane]);
            AgreesAlone(in x, in kinds, in load, state, in single[lane], seed, seen);
            Put(
                lane,
                NumbersAccess.Fields<DriveNumbers<Real>, Real>(ref x),
                Cells.Of(NumbersAccess.Fields<DriveNumbers<Lanes>, Lanes>(ref numbers))
            );
            Put(lane, state, Cells.Of(states));
            ReadOnlySpan<Dual<Real>> from = NumbersAccess.Fields<LoadNumbers<Dual<Real>>, Dual<Real>>(ref load);
            Span<Dual<Lanes>> to = NumbersAccess.Fields<LoadNumbers<Dual<Lanes>>, Dual<Lanes>>(ref loads);
            for (int i = 0; i < from.Length; i++)
            {
                (Lanes value, Lanes slope) = to[i];
                Cells.Of(ref value)[lane] = from[i].Value;
                Cells.Of(ref slope)[lane] = from[i].Slope;
                to[i] = new(value, slope);
            }
        }

        DriveSlopes.Run(in numbers, in kinds, in loads, states, in eight);
        for (int row = 0; row < DriveStates.Count; row++)
        {
            for (int lane = 0; lane < single.Length; lane++)
            {
                double size = Size(in single[lane], row);
                for (int column = 0; column < DriveStates.Coupled; column++)
                {
                    double allowed = Agreement * size / DriveStates.Scales[column];
                    Assert.Equal(single[lane][row, column], Cells.Of(ref eight[row, column])[lane], allowed);
                }

                Assert.Equal(
                    single[lane].Time[row],
                    Cells.Of(ref eight.Time[row])[lane],
                    Agreement * (size + Math.Abs(single[lane].Time[row]))
                );
            }
        }
    }

    private static void AgreesAlone(
        in DriveNumbers<Real> x,
        in DriveKinds kinds,
        in LoadNumbers<Dual<Real>> load,
        Real[] state,
        in SlopeTable<Real> slopes,
        int seed,
        Dictionary<string, int> seen
    )
    {
        DriveNumbers<Real> copy = x;
        LoadNumbers<Dual<Real>> loadCopy = load;
        DriveNumbers<Dual<Real>> lifted = default;
        Span<Real> plain = NumbersAccess.Fields<DriveNumbers<Real>, Real>(ref copy);
        Span<Dual<Real>> wide = NumbersAccess.Fields<DriveNumbers<Dual<Real>>, Dual<Real>>(ref lifted);
        for (int i = 0; i < plain.Length; i++)
        {
            wide[i] = plain[i].Value;
        }

        Dual<Real>[] rates = new Dual<Real>[DriveStates.Count];
        Dual<Real>[] states = new Dual<Real>[DriveStates.Count];
        double[,] expected = new double[DriveStates.Count, DriveStates.Count + 1];
        for (int direction = 0; direction <= DriveStates.Count; direction++)
        {
            bool ofTime = direction == DriveStates.Count;
            LoadNumbers<Dual<Real>> loads = loadCopy;
            foreach (ref Dual<Real> number in NumbersAccess.Fields<LoadNumbers<Dual<Real>>, Dual<Real>>(ref loads))
            {
                number = new(number.Value, ofTime ? number.Slope : 0);
            }

            for (int i = 0; i < states.Length; i++)
            {
                states[i] = new(state[i], i == direction ? 1 : 0);
            }

            DriveRates.Run(in lifted, in kinds, in loads, states, rates, out DriveWork<Dual<Real>> work);
            if (ofTime)
            {
                Count(in copy, in kinds, in loads, state, in work, seen);
            }

            for (int row = 0; row < rates.Length; row++)
            {
                expected[row, direction] = rates[row].Slope;
            }
        }

        for (int row = 0; row < DriveStates.Count; row++)
        {
            double size = Size(in slopes, row);
            for (int column = 0; column < DriveStates.Coupled; column++)
            {
                double difference = Math.Abs(expected[row, column] - slopes[row, column]);
                Assert.True(
                    difference <= Agreement * size / DriveStates.Scales[column],
                    $"machine {seed}: rate {row} by state {column}: {expected[row, column]:R}, {slopes[row, column].Value:R}"
                );
            }

            double time = expected[row, DriveStates.Count];
            Assert.True(
                Math.Abs(time - slopes.Time[row]) <= Agreement * (size + Math.Abs(time)),
                $"machine {seed}: rate {row} by time: {time:R}, {slopes.Time[row].Value:R}"
            );

            // States that follow feed on themselves alone.
            for (int column = DriveStates.Coupled; column < DriveStates.Count; column++)
            {
                double own = row == column ? slopes.Own[row] : 0;
                Assert.Equal(expected[row, column], own, 1e-14);
            }
        }
    }

    /// <summary>The row's largest slope, each reckoned over the usual size of its state.</summary>
    private static double Size(in SlopeTable<Real> slopes, int row)
    {
        // Where large terms cancel, as in the sliding of a roller that grips, rounding is left: at least a usual rate.
        double size = DriveStates.Scales[row];
        for (int column = 0; column < DriveStates.Coupled; column++)
        {
            size = Math.Max(size, Math.Abs(slopes[row, column]) * DriveStates.Scales[column]);
        }

        return size;
    }

    private static void Count(
        in DriveNumbers<Real> x,
        in DriveKinds kinds,
        in LoadNumbers<Dual<Real>> loads,
        Real[] state,
        in DriveWork<Dual<Real>> work,
        Dictionary<string, int> seen
    )
    {
        double gripping = work.GrippingPull.Value;
        double largest = work.LargestPull.Value;
        double volts = Math.Abs(work.Voltage.Value);
        bool on = loads.On.Value > 0.5;
        double measured = kinds.Sensor switch
        {
            SpeedSensor.Belt => state[DriveStates.Belt],
            SpeedSensor.DriveRoller => state[DriveStates.Roller] * x.RollerRadius,
            _ => state[DriveStates.Motor] * x.FacePerMotor,
        };
        double demand = (x.Gain * (loads.SetSpeed.Value - measured)) + state[DriveStates.Integrator];
        See(seen, "slips forwards", gripping > largest);
        See(seen, "slips backwards", gripping < -largest);
        See(seen, "grips", Math.Abs(gripping) < largest);
        See(seen, "no tension", largest == 0);
        See(seen, "current limited", on && demand > x.CurrentLimit);
        See(seen, "current at least", on && demand < (kinds.CanBrake ? -x.CurrentLimit : 0));
        See(seen, "voltage limited", on && kinds.CanBrake && volts > x.VoltageLimit * (1 - 1e-12));
        See(seen, "diode blocks", !kinds.CanBrake && volts > x.VoltageLimit * (1 + 1e-9));
        See(seen, "key pulled", !on);
        See(seen, "near rest", Math.Abs(state[DriveStates.Belt]) < 0.01);
        See(seen, "direct", kinds.Direct);
    }

    private static void See(Dictionary<string, int> seen, string regime, bool holds) =>
        seen[regime] = seen.GetValueOrDefault(regime) + (holds ? 1 : 0);

    private static DriveNumbers<Real> Numbers(Random random, in MachineKinds of, in DriveKinds kinds)
    {
        MachineNumbers<Real> machine = RandomMachines.Numbers(random, in of);
        DynamicsNumbers dynamics = Bench.WithHeat(Bench.Dynamics);
        dynamics.MotorInertia = Math.Pow(10, RandomMachines.Between(random, -3, -1.3));
        dynamics.LossFactor = RandomMachines.Between(random, 0.03, 0.3);
        dynamics.DeckStatic = machine.DeckFriction * RandomMachines.Between(random, 1, 1.8);
        dynamics.RollerStaticRatio = RandomMachines.Between(random, 1, 1.5);
        dynamics.PulleyStaticRatio = RandomMachines.Between(random, 1, 1.5);
        return DriveSetup.Numbers(in machine, in dynamics, in kinds);
    }

    private static LoadNumbers<Dual<Real>> Loads(Random random)
    {
        double jam = random.Next(4) == 0 ? RandomMachines.Between(random, 50, 2000) : 0;
        double share = random.NextDouble();
        double normal = RandomMachines.Between(random, 0, 2500);
        double along = RandomMachines.Between(random, -400, 400);
        return new()
        {
            Normal = new(normal, RandomMachines.Between(random, -1e5, 1e5)),
            SharedNormal = new(normal * share, RandomMachines.Between(random, -1e5, 1e5)),
            Along = new(along, RandomMachines.Between(random, -1e4, 1e4)),
            SharedAlong = new(along * share, RandomMachines.Between(random, -1e4, 1e4)),
            Jam = jam,
            SharedJam = jam * share,
            SetSpeed = new(RandomMachines.Between(random, 0, 6), RandomMachines.Between(random, -1, 1)),
            On = random.Next(4) == 0 ? 0 : 1,
        };
    }

    private static Real[] State(Random random, in DriveNumbers<Real> x)
    {
        double speed =
            random.Next(4) == 0 ? RandomMachines.Between(random, -0.02, 0.02) : RandomMachines.Between(random, -1, 6);
        double approach = RandomMachines.Between(random, -0.05, 0.05) * (random.Next(3) == 0 ? 10 : 1);
        double pulley = RandomMachines.Between(random, -0.3, 0.3);
        Real[] state = new Real[DriveStates.Count];
        state[DriveStates.Belt] = speed;
        state[DriveStates.Roller] = (speed + approach) / x.RollerRadius;
        state[DriveStates.Motor] = ((state[DriveStates.Roller] * x.RollerPulleyRadius) + pulley) / x.MotorPulleyRadius;
        state[DriveStates.Stretch] = RandomMachines.Between(random, -800, 800) / x.StrandStiffness;
        state[DriveStates.Current] = RandomMachines.Between(
            random,
            random.Next(3) == 0 ? -1 : -30,
            random.Next(3) == 0 ? 1 : 30
        );
        state[DriveStates.Integrator] = RandomMachines.Between(random, -30, 30);
        state[DriveStates.Winding] = RandomMachines.Between(random, 10, 150);
        state[DriveStates.Magnet] = RandomMachines.Between(random, 10, 90);
        state[DriveStates.BeltHeat] = RandomMachines.Between(random, 10, 90);
        state[DriveStates.DeckHeat] = RandomMachines.Between(random, 10, 90);
        return state;
    }

    private static void Put(int lane, ReadOnlySpan<Real> from, Span<double> to)
    {
        for (int i = 0; i < from.Length; i++)
        {
            to[(i * Lanes.Count) + lane] = from[i];
        }
    }
}
