using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Draws a machine for a cause: healthy ranges, moved where the cause moves them, until it shows what it should.</summary>
/// <remarks>
/// Two kinds of law. What a cause moves has ranges of the bench's own. What no cause moves and nobody reads by itself
/// (stiffness of the belt, friction of a dry drive roller, losses of motor, controller and supply) is drawn from the laws
/// that the review states as its priors: an interval holds what it says only over the machines that it speaks of.
/// </remarks>
internal static class Draw
{
    private static readonly VisitOptions Stated = VisitOptions.Default;

    internal static HiddenState State(Cause cause, Random random)
    {
        for (int attempt = 0; attempt < 4000; attempt++)
        {
            HiddenState drawn = Once(cause, random);
            if (Shows(drawn))
            {
                return drawn;
            }
        }

        throw new InvalidOperationException($"No machine shows {cause}.");
    }

    private static HiddenState Once(Cause cause, Random random)
    {
        double Between(double from, double to) => from + ((to - from) * random.NextDouble());
        double Around(double centre, Threshold spread, double most) =>
            Math.Min(most, centre * Math.Exp(spread.Value * random.Normal()));
        double Stating(Threshold centre, Threshold spread, double most) => Around(centre.Value, spread, most);
        bool runs = random.NextDouble() < 0.6;
        double dragBefore = Between(18, 32);
        bool oily = cause is Cause.OilOnDriveRoller or Cause.OverLubricated;
        double dryRoller = Stating(Stated.PriorRollerFriction, Stated.PriorRollerFrictionSpread, most: 1.5);
        return new()
        {
            Cause = cause,
            Tension = cause switch
            {
                Cause.RunningBeltSlack or Cause.BoltsAtTheirEnd => Between(350, 800),
                Cause.OverTightened => Between(1900, 2900),
                _ => Between(850, 1500),
            },
            PerWidth = Stating(Stated.PriorBeltStiffness, Stated.PriorBeltStiffnessSpread, most: 39e3) / 1000,
            DeckFriction = cause switch
            {
                Cause.DeckDry => Between(0.28, 0.42),
                Cause.BeltAndDeckWorn => Between(0.29, 0.45),
                Cause.OverLubricated or Cause.OilOnDriveRoller => Between(0.1, 0.17),
                _ => Between(0.13, 0.22),
            },
            Fall = cause switch
            {
                Cause.DeckDry => Between(0.35, 0.55),
                Cause.BeltAndDeckWorn => Between(0.01, 0.12),
                _ => Between(0, 0.1),
            },
            CleanRollerFriction = oily
                ? Stating(Stated.CleanRollerFriction, Stated.CleanRollerFrictionSpread, most: 1.5)
                : dryRoller,
            RollerFriction = cause switch
            {
                Cause.OilOnDriveRoller => Between(0.1, 0.17),
                Cause.OverLubricated => Between(0.12, 0.2),
                _ => dryRoller,
            },
            Drag = cause switch
            {
                Cause.RollerBearing => Between(50, 95),
                Cause.OverTightened => Between(35, 50),
                _ => dragBefore,
            },
            DragBefore = dragBefore,
            MotorFriction = Stating(Stated.PriorMotorFriction, Stated.PriorMotorFrictionSpread, most: 5),
            Resistance = Stating(Stated.PriorArmatureResistance, Stated.PriorArmatureResistanceSpread, most: 50),
            BrushDrop =
                (double)BenchMachine.AsDescribed.Motor!.BrushDrop.Volts
                + (Stated.BrushDropSpread.Value * random.Normal()),
            Efficiency = Stating(Stated.PriorControllerEfficiency, Stated.PriorControllerEfficiencySpread, most: 1),
            Standby = Around((double)Machines.Plain.Supply!.StandbyPower.Watts, Stated.StandbyPowerSpread, most: 200),
            DriveBeltTension =
                cause == Cause.DriveBeltSlack
                    ? Between(60, 150)
                    : Around(BenchMachine.StatedDriveBeltTension, Stated.GivenValueSpread, most: 3000),
            DriveBeltFriction =
                cause == Cause.DriveBeltGlazed
                    ? Between(0.08, 0.16)
                    : Around(BenchMachine.StatedDriveBeltFriction, Stated.GivenValueSpread, most: 1.5),
            PulleySlip = cause == Cause.PulleyLoose ? Between(0.03, 0.12) : 0,
            MotorStrength =
                cause == Cause.MotorWeak ? Between(0.68, 0.88) : Around(1, Stated.PlateConstantSpread, most: 2),
            Mass = cause == Cause.UserBeyondPlate ? Between(135, 160) : Between(70, 128),
            Speed = runs ? Between(2.3, 3.6) : Between(1, 1.8),
            Grade = cause == Cause.DriveOverrun ? Between(0.16, 0.22) : 0,
        };
    }

    /// <summary>Slip that somebody on the belt notices: a share of a step of half a second.</summary>
    private static bool Felt(Answer<Length> slide, HiddenState state) =>
        slide.Is(out Length each) && each.Meters > 0.015 * 0.5 * state.Speed;

    private static bool Shows(HiddenState state)
    {
        OperatingPoint point = state.Truth(0).At(state.Demand);
        if (!point.BeltMargin.Is(out double belt) || !point.DriveBeltMargin.Is(out double drive))
        {
            return false;
        }

        return state.Cause switch
        {
            Cause.RunningBeltSlack or Cause.BoltsAtTheirEnd or Cause.OilOnDriveRoller => drive > 1.1
                && Felt(point.BeltSlide, state),
            Cause.DriveBeltSlack or Cause.DriveBeltGlazed => belt > 1.1 && Felt(point.DriveBeltSlide, state),
            Cause.UserBeyondPlate or Cause.OverLubricated => drive > 1.1,

            // Uphill the person pulls more than deck, rollers and losses take.
            Cause.DriveOverrun => state.Grade > state.DeckFriction + (state.Drag / (state.Mass * 9.80665)) + 0.02,
            _ => belt > 1.1 && drive > 1.1,
        };
    }
}
