using System.Globalization;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Service.Estimation;

/// <summary>Deck friction from the readings that tell it. Best first: pull, motor current, mains power.</summary>
public static class DeckFriction
{
    /// <summary>From a known mass pulled along with the belt, the machine unplugged.</summary>
    /// <param name="mass">The mass on the belt, above 0.</param>
    /// <param name="loadedPull">Pull with the mass.</param>
    /// <param name="emptyPull">Pull without it.</param>
    /// <param name="scaleUncertainty">Relative standard uncertainty of the scale; the default where null.</param>
    /// <returns>Friction and its standard uncertainty; no answer where the loaded pull is not the larger.</returns>
    /// <remarks>See <see cref="DeckLaws.FrictionFromPull"/>. On the level.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not above 0.</exception>
    public static Answer<Estimate<double>> FromPull(
        Mass mass,
        Force loadedPull,
        Force emptyPull,
        double? scaleUncertainty = null
    )
    {
        double kilograms = Above(Si.Mass.ToSi(mass), "mass", " kg");
        double loaded = Si.Force.ToSi(loadedPull);
        double empty = Si.Force.ToSi(emptyPull);
        double relative = scaleUncertainty ?? VisitOptions.Default.ScaleForce.Value;
        return FromExtraPull(
            loaded,
            empty,
            relative * Math.Sqrt((loaded * loaded) + (empty * empty)),
            kilograms,
            0,
            "N"
        );
    }

    /// <summary>From the motor current with and without the user, at one belt speed.</summary>
    /// <param name="mass">Mass of the user, above 0.</param>
    /// <param name="loadedCurrent">Mean armature current with the user.</param>
    /// <param name="emptyCurrent">Mean armature current without.</param>
    /// <param name="motorConstant">Motor constant, best from <see cref="MotorConstantFromUnloadedPoints"/>.</param>
    /// <param name="motorSpeed">Speed of the motor.</param>
    /// <param name="beltSpeed">Speed of the belt, above 0.</param>
    /// <param name="grade">Grade, positive uphill.</param>
    /// <param name="meterUncertainty">Relative standard uncertainty of a current; the default where null.</param>
    /// <returns>Friction and its standard uncertainty; no answer where they tell of no friction: on the level, where the
    /// loaded current is not the larger.</returns>
    /// <remarks>Losses of the drive belt are left out; hands must be off the rails.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Mass or speed is not above 0.</exception>
    public static Answer<Estimate<double>> FromCurrent(
        Mass mass,
        ElectricCurrent loadedCurrent,
        ElectricCurrent emptyCurrent,
        Estimate<MotorConstant> motorConstant,
        RotationalSpeed motorSpeed,
        Speed beltSpeed,
        Ratio grade,
        double? meterUncertainty = null
    )
    {
        double kilograms = Above(Si.Mass.ToSi(mass), "mass", " kg");
        double speed = Above(Si.Speed.ToSi(beltSpeed), "beltSpeed", " m/s");
        double loaded = Si.Current.ToSi(loadedCurrent);
        double empty = Si.Current.ToSi(emptyCurrent);
        double constant = motorConstant.Value.VoltSecondsPerRadian;
        double perAmpere = DeckLaws.PullFromCurrent<Real>(1, constant, Si.RotationalSpeed.ToSi(motorSpeed), speed);
        double relative = meterUncertainty ?? VisitOptions.Default.MeterCurrent.Value;
        double ofMeter = relative * Math.Sqrt((loaded * loaded) + (empty * empty));
        double ofConstant = (loaded - empty) * motorConstant.StandardUncertainty.VoltSecondsPerRadian / constant;
        return FromExtraPull(
            perAmpere * loaded,
            perAmpere * empty,
            perAmpere * Math.Sqrt((ofMeter * ofMeter) + (ofConstant * ofConstant)),
            kilograms,
            Math.Atan(Si.Ratio.ToSi(grade)),
            "N"
        );
    }

    /// <summary>From mains power with and without the user, at one belt speed.</summary>
    /// <param name="mass">Mass of the user, above 0.</param>
    /// <param name="loadedPower">Mean mains power with the user.</param>
    /// <param name="emptyPower">Mean mains power without.</param>
    /// <param name="beltSpeed">Speed of the belt, above 0.</param>
    /// <param name="grade">Grade, positive uphill.</param>
    /// <param name="efficiency">Efficiency from mains to belt; it carries most of the uncertainty.</param>
    /// <param name="meterUncertainty">Relative standard uncertainty of a power; the default where null.</param>
    /// <returns>Friction and its standard uncertainty; no answer where they tell of no friction: on the level, where the
    /// loaded power is not the larger.</returns>
    /// <remarks>A ratio of two such values, before and after a service, needs no efficiency.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Mass, speed or efficiency is not above 0.</exception>
    public static Answer<Estimate<double>> FromMainsPower(
        Mass mass,
        Power loadedPower,
        Power emptyPower,
        Speed beltSpeed,
        Ratio grade,
        Estimate<double> efficiency,
        double? meterUncertainty = null
    )
    {
        double kilograms = Above(Si.Mass.ToSi(mass), "mass", " kg");
        double speed = Above(Si.Speed.ToSi(beltSpeed), "beltSpeed", " m/s");
        double share = Above(efficiency.Value, "efficiency", "");
        double loaded = Si.Power.ToSi(loadedPower);
        double empty = Si.Power.ToSi(emptyPower);
        double perWatt = DeckLaws.PullFromPower<Real>(1, share, speed);
        double relative = meterUncertainty ?? VisitOptions.Default.MeterPower.Value;
        double ofMeter = relative * Math.Sqrt((loaded * loaded) + (empty * empty));
        double ofEfficiency = (loaded - empty) * efficiency.StandardUncertainty / share;
        return FromExtraPull(
            perWatt * loaded,
            perWatt * empty,
            perWatt * Math.Sqrt((ofMeter * ofMeter) + (ofEfficiency * ofEfficiency)),
            kilograms,
            Math.Atan(Si.Ratio.ToSi(grade)),
            "N"
        );
    }

    /// <summary>Motor constant from two unloaded points of voltage, current and speed.</summary>
    /// <param name="low">Voltage, current and motor speed at the lower speed.</param>
    /// <param name="high">The same at the higher speed, at least 1.2 times the lower one.</param>
    /// <param name="resistance">Armature resistance; null leaves it out, which matters little unloaded.</param>
    /// <returns>The constant and its standard uncertainty; no answer where the points lie too close.</returns>
    /// <remarks>
    /// See <see cref="DcMotorLaws.ConstantFromTwoPoints"/>. Uncertainty from 0.5 % of each voltage and speed, and where the
    /// resistance is not known from 1 ohm of it (common practice, no source).
    /// </remarks>
    public static Answer<Estimate<MotorConstant>> MotorConstantFromUnloadedPoints(
        (ElectricPotential Voltage, ElectricCurrent Current, RotationalSpeed Speed) low,
        (ElectricPotential Voltage, ElectricCurrent Current, RotationalSpeed Speed) high,
        ElectricResistance? resistance = null
    )
    {
        const double Meter = 0.005;
        double v1 = Si.Voltage.ToSi(low.Voltage);
        double v2 = Si.Voltage.ToSi(high.Voltage);
        double w1 = Si.RotationalSpeed.ToSi(low.Speed);
        double w2 = Si.RotationalSpeed.ToSi(high.Speed);
        double i1 = Si.Current.ToSi(low.Current);
        double i2 = Si.Current.ToSi(high.Current);
        if (!(w2 >= 1.2 * w1))
        {
            return new Shortfall(Reason.NotObservable, "MotorConstant", 1.2 * w1, w2, "rad/s");
        }

        double ohms = resistance is { } known ? Si.Resistance.ToSi(known) : 0;
        double constant = DcMotorLaws.ConstantFromTwoPoints<Real>(v1, v2, w1, w2, i1, i2, ohms);
        double ofVoltage = Meter * Math.Sqrt((v1 * v1) + (v2 * v2));
        double ofSpeed = Meter * constant * Math.Sqrt((w1 * w1) + (w2 * w2));
        double ofResistance = resistance is null ? i2 - i1 : 0;
        double uncertainty =
            Math.Sqrt((ofVoltage * ofVoltage) + (ofSpeed * ofSpeed) + (ofResistance * ofResistance)) / (w2 - w1);
        return constant > 0
            ? new Estimate<MotorConstant>(
                MotorConstant.FromVoltSecondsPerRadian(constant),
                MotorConstant.FromVoltSecondsPerRadian(uncertainty)
            )
            : new Shortfall(Reason.ReadingsContradict, "MotorConstant", 0, constant, "V s/rad");
    }

    private static Answer<Estimate<double>> FromExtraPull(
        double loaded,
        double empty,
        double uncertainty,
        double mass,
        double incline,
        string unit
    )
    {
        double friction = DeckLaws.FrictionFromPull<Real>(loaded - empty, mass, incline);
        return friction > 0
            ? new Estimate<double>(friction, uncertainty / (mass * Gravity.Standard * Math.Cos(incline)))
            : new Shortfall(Reason.ReadingsContradict, "DeckFriction", empty, loaded, unit);
    }

    private static double Above(double value, string name, string unit) =>
        value > 0
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                string.Create(CultureInfo.InvariantCulture, $"{name}: {value}{unit} is not above 0{unit}.")
            );
}
