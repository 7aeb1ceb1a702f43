using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class OverrunLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.Incline)}",
            "By hand: without other drag the angle of friction; 0.75 is that of a 3-4-5 triangle",
            Mark.Derived,
            Math.Atan(0.75),
            1e-14,
            "rad",
            () => OverrunLaws.Incline<Real>(0.75, 0, 800)
        ),
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.Incline)}",
            "By hand: without deck friction half of the weight holds at 30 degrees",
            Mark.Derived,
            Math.PI / 6,
            1e-14,
            "rad",
            () => OverrunLaws.Incline<Real>(0, 400, 800)
        ),
        Generated.Check(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.Incline)}",
            "overrun.incline",
            "rad",
            () => OverrunLaws.Incline<Real>(0.08, 45, 882.6)
        ),
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.DeckFriction)}",
            "By hand: a 15 % grade without other drag",
            Mark.Derived,
            0.15,
            1e-14,
            "1",
            () => OverrunLaws.DeckFriction<Real>(Math.Atan(0.15), 0, 800)
        ),
        Generated.Check(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.DeckFriction)}",
            "overrun.friction",
            "1",
            () => OverrunLaws.DeckFriction<Real>(0.16, 45, 882.6)
        ),
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.SettledSpeed)}",
            "By hand: 0.6 N m against 0.2 N m at 100 rad/s",
            Mark.Derived,
            300,
            1e-9,
            "rad/s",
            () => OverrunLaws.SettledSpeed<Real>(0.6, 0.2, 100)
        ),
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.DragAtBelt)}",
            "By hand: 0.1 N m at 300 rad/s is 30 W, at 2 m/s 15 N",
            Mark.Derived,
            15,
            1e-12,
            "N",
            () => OverrunLaws.DragAtBelt<Real>(0.1, 300, 2)
        ),
        new(
            $"{nameof(OverrunLaws)}.{nameof(OverrunLaws.TorqueAtMotor)}",
            "By hand: 15 N at 2 m/s is 30 W, at 300 rad/s 0.1 N m",
            Mark.Derived,
            0.1,
            1e-15,
            "N m",
            () => OverrunLaws.TorqueAtMotor<Real>(15, 300, 2)
        ),
    ];
}
