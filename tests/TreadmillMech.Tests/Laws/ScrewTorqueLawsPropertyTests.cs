using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class ScrewTorqueLawsPropertyTests
{
    // With the friction angle rho and the lead angle phi, the torques are F d/2 times tan(phi + rho) and tan(rho - phi).
    [Property]
    public void TorquesAreTangentsOfSumAndDifferenceOfTheAngles(Fraction diameter, Fraction lead, Fraction friction)
    {
        double d = diameter.Between(0.006, 0.02);
        double l = lead.Between(5e-4, 8e-3);
        double f = friction.Between(0, 0.4);
        double rho = Math.Atan(f / Math.Cos(Math.PI / 6));
        double phi = Math.Atan(l / (Math.PI * d));
        Close.To(500 * d * Math.Tan(phi + rho), ScrewTorqueLaws.RaisingTorque<Real>(1000, d, l, f, Math.PI / 6), 1e-11);
        Close.Within(
            500 * d * Math.Tan(rho - phi),
            ScrewTorqueLaws.LoweringTorque<Real>(1000, d, l, f, Math.PI / 6),
            1e-11
        );
    }

    // A screw driven the other way by its load is the same wedge with friction reversed.
    [Property]
    public void LoweringIsRaisingWithFrictionReversed(Fraction lead, Fraction friction, Fraction flank)
    {
        double l = lead.Between(5e-4, 8e-3);
        double f = friction.Between(0, 0.4);
        double a = flank.Between(0, 0.6);
        Close.Within(
            -(double)ScrewTorqueLaws.RaisingTorque<Real>(1000, 0.01, l, -f, a),
            ScrewTorqueLaws.LoweringTorque<Real>(1000, 0.01, l, f, a),
            1e-12
        );
    }

    [Property]
    public void HoldsByItselfExactlyWhereTheLockingRatioIsAboveOne(Fraction lead, Fraction friction, Fraction flank)
    {
        double l = lead.Between(5e-4, 8e-3);
        double f = friction.Between(0.01, 0.4);
        double a = flank.Between(0, 0.6);
        double ratio = ScrewTorqueLaws.LockingRatio<Real>(0.01, l, f, a);
        double torque = ScrewTorqueLaws.LoweringTorque<Real>(1000, 0.01, l, f, a);
        Assert.True(Math.Abs(ratio - 1) < 1e-9 || (torque > 0) == (ratio > 1));

        // At a ratio of one the torque vanishes.
        Close.Within(0, ScrewTorqueLaws.LoweringTorque<Real>(1000, 0.01, l, f / ratio, a), 1e-12);
    }

    [Property]
    public void EfficiencyIsBelowOneAndBelowAHalfWhereItHolds(Fraction lead, Fraction friction)
    {
        double l = lead.Between(5e-4, 8e-3);
        double f = friction.Between(0.001, 0.4);
        double e = ScrewTorqueLaws.Efficiency<Real>(
            1000,
            l,
            ScrewTorqueLaws.RaisingTorque<Real>(1000, 0.01, l, f, Math.PI / 6)
        );
        Assert.InRange(e, 0, 1 - 1e-9);
        if (ScrewTorqueLaws.LockingRatio<Real>(0.01, l, f, Math.PI / 6) >= 1)
        {
            Assert.True(e < 0.5);
        }
    }

    [Property]
    public void WithoutFrictionNoWorkIsLost(Fraction lead)
    {
        double l = lead.Between(5e-4, 8e-3);
        double up = ScrewTorqueLaws.RaisingTorque<Real>(1000, 0.01, l, 0, Math.PI / 6);
        Close.To(1, ScrewTorqueLaws.Efficiency<Real>(1000, l, up));
        Close.To(-up, ScrewTorqueLaws.LoweringTorque<Real>(1000, 0.01, l, 0, Math.PI / 6));
    }

    // The guideline's short form is the first order in the angles.
    [Property]
    public void TighteningTorqueIsTheShortFormForSmallAngles(Fraction pitch, Fraction friction)
    {
        double p = pitch.Between(5e-6, 5e-5);
        double f = friction.Between(0.001, 0.01);
        double shortForm = 1000 * ((0.16 * p) + (0.58 * 0.009 * f) + (0.5 * 0.012 * f));

        // 0.16 stands for 1/(2 pi) = 0.1592 and 0.58 for 1/(2 cos 30 deg) = 0.5774: half a per cent apart.
        Close.To(shortForm, ScrewTorqueLaws.TighteningTorque<Real>(1000, 0.009, p, f, 0.012, f), 6e-3);
    }

    [Property]
    public void TighteningTorqueIsThreadAndHeadTogether(Fraction friction, Fraction head)
    {
        double f = friction.Between(0.05, 0.3);
        double k = head.Between(0.05, 0.3);
        Close.To(
            ScrewTorqueLaws.RaisingTorque<Real>(1000, 0.009, 0.00125, f, Math.PI / 6)
                + ScrewTorqueLaws.CollarTorque<Real>(1000, 0.012, k),
            ScrewTorqueLaws.TighteningTorque<Real>(1000, 0.009, 0.00125, f, 0.012, k)
        );
    }

    // At the force found, pull and torsion make the limit: shear constant over the section is 3/4 of the elastic one.
    [Property]
    public void TighteningForceBringsTheEquivalentStressToItsLimit(Fraction friction, Fraction pitch, Fraction limit)
    {
        double f = friction.Between(0.05, 0.3);
        double p = pitch.Between(5e-4, 2e-3);
        double stress = limit.Between(1e8, 1e9);
        double force = ScrewTorqueLaws.TighteningForce<Real>(stress, 5.8e-5, 0.009, p, f);
        double torque = ScrewTorqueLaws.RaisingTorque<Real>(force, 0.009, p, f, Math.PI / 6);
        Close.To(
            stress,
            ScrewTorqueLaws.EquivalentStress<Real>(
                ScrewTorqueLaws.AxialStress<Real>(force, 5.8e-5),
                0.75 * torque,
                Math.Sqrt(4 * 5.8e-5 / Math.PI)
            )
        );
        Close.To(
            stress,
            ScrewTorqueLaws.AxialStress<Real>(
                ScrewTorqueLaws.TighteningForce<Real>(stress, 5.8e-5, 0.009, 1e-12, 0),
                5.8e-5
            )
        );
    }
}
