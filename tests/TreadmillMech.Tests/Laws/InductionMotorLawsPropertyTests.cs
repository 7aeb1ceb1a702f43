using System.Numerics;
using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>The circuit in real numbers against the same circuit in complex ones.</summary>
[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class InductionMotorLawsPropertyTests
{
    private const double Voltage = 133;
    private const double StatorResistance = 1.1;
    private const double StatorReactance = 2.2;

    [Property]
    public void FieldImpedanceIsTheParallelOfTwoBranches(Fraction resistance, Fraction reactance, Fraction slip)
    {
        (double r2, double x2, double xm, double s) = Rotor(resistance, reactance, slip);
        Complex field = Field(r2, x2, xm, s);
        Close.To(field.Real, InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, s), 1e-11);
        Close.To(field.Imaginary, InductionMotorLaws.FieldReactance<Real>(r2, x2, xm, s), 1e-11);
    }

    [Property]
    public void CurrentAndPowerFactorAreThoseOfTheComplexCircuit(Fraction resistance, Fraction reactance, Fraction slip)
    {
        (double r2, double x2, double xm, double s) = Rotor(resistance, reactance, slip);
        Complex current = Voltage / (new Complex(StatorResistance, StatorReactance) + Field(r2, x2, xm, s));
        (double i, double factor) = Stator(r2, x2, xm, s);
        Close.To(current.Magnitude, i, 1e-11);
        Close.To(Math.Cos(current.Phase), factor, 1e-11);
    }

    [Property]
    public void PowerInIsHeatOfTheStatorAndPowerAcrossTheGap(Fraction resistance, Fraction reactance, Fraction slip)
    {
        (double r2, double x2, double xm, double s) = Rotor(resistance, reactance, slip);
        (double i, double factor) = Stator(r2, x2, xm, s);
        double gap = InductionMotorLaws.AirGapPower<Real>(i, InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, s));
        Close.To(3 * Voltage * i * factor, (3 * i * i * StatorResistance) + gap, 1e-11);
    }

    // The share s heats the rotor, the rest is work: the torque at the shaft's speed and at the field's.
    [Property]
    public void PowerAcrossTheGapIsRotorHeatAndWork(Fraction resistance, Fraction reactance, Fraction slip)
    {
        (double r2, double x2, double xm, double s) = Rotor(resistance, reactance, slip);
        (double i, double _) = Stator(r2, x2, xm, s);
        Complex field = Field(r2, x2, xm, s);
        double rotor = i * (field / new Complex(r2 / s, x2)).Magnitude;
        double gap = InductionMotorLaws.AirGapPower<Real>(i, InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, s));
        double synchronous = InductionMotorLaws.SynchronousSpeed<Real>(2 * Math.PI * 60, 2);
        double torque = InductionMotorLaws.Torque<Real>(gap, synchronous);
        double work = torque * InductionMotorLaws.ShaftSpeed<Real>(synchronous, s);
        Close.To(gap, (3 * rotor * rotor * r2) + work, 1e-11);
        Close.To((1 - s) * gap, work, 1e-11);
    }

    [Property]
    public void NoSlipLeavesTheMagnetisingBranch(Fraction reactance)
    {
        double xm = reactance.Between(10, 60);
        Close.Within(0, InductionMotorLaws.FieldResistance<Real>(0.5, 1, xm, 1e-9), 1e-5);
        Close.To(xm, InductionMotorLaws.FieldReactance<Real>(0.5, 1, xm, 1e-9), 1e-8);
    }

    // A machine driven above the speed of its field gives power back.
    [Property]
    public void NegativeSlipGenerates(Fraction resistance, Fraction reactance, Fraction slip)
    {
        (double r2, double x2, double xm, double s) = Rotor(resistance, reactance, slip);
        Assert.True(InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, -s) < 0);
        Assert.True(InductionMotorLaws.ShaftSpeed<Real>(188, -s) > 188);
    }

    [Property]
    public void ShaftSpeedAndSlipUndoEachOther(Fraction slip, Fraction frequency)
    {
        double s = slip.Between(-0.1, 1);
        double synchronous = InductionMotorLaws.SynchronousSpeed<Real>(frequency.Between(50, 700), 3);
        Close.Within(s, 1 - (InductionMotorLaws.ShaftSpeed<Real>(synchronous, s) / synchronous), 1e-14);
    }

    private static (double Current, double Factor) Stator(double r2, double x2, double xm, double s)
    {
        double r = InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, s);
        double x = InductionMotorLaws.FieldReactance<Real>(r2, x2, xm, s);
        return (
            InductionMotorLaws.StatorCurrent<Real>(Voltage, StatorResistance, StatorReactance, r, x),
            InductionMotorLaws.PowerFactor<Real>(StatorResistance, StatorReactance, r, x)
        );
    }

    private static Complex Field(double r2, double x2, double xm, double s) =>
        1 / ((1 / new Complex(r2 / s, x2)) + (1 / new Complex(0, xm)));

    private static (double R2, double X2, double Xm, double S) Rotor(
        Fraction resistance,
        Fraction reactance,
        Fraction slip
    ) => (resistance.Between(0.1, 2), reactance.Between(0.1, 3), reactance.Between(60, 10), slip.Between(0.005, 1));
}
