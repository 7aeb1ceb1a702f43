using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class DeckEdgeDragTests
{
    // numpy.linalg.norm of the two pulls at each edge: 64.0 N at 800 N, 0.05 and 0.03 rad (belt.edge in law_values.tsv).
    [Fact]
    public void TheEdgesBearTheBendOfTheBelt()
    {
        DeckEdgeDrag drag = Of(Level.Machine).Value;
        Assert.Equal(63.99493347 * 1000 / 800, drag.NormalForce.Newtons, tolerance: 1e-7);
        Assert.Equal(0.2 * drag.NormalForce.Newtons, drag.Drag.Value.Newtons, tolerance: 1e-9);
        Assert.Equal(drag.Drag.Value.Newtons / 20, drag.ShareOfBeltDrag.Value.DecimalFractions, tolerance: 1e-9);
    }

    [Fact]
    public void AFlatLineHasNoDrag() =>
        Assert.Equal(0, DeckEdgeDrag.Of(Level.Machine, Angle.Zero, Angle.Zero).Value.Drag.Value.Newtons);

    [Fact]
    public void TheAngleComesFromARuler() =>
        Assert.Equal(
            Math.Atan(0.1),
            DeckEdgeDrag.AngleOf(Length.FromMillimeters(5), Length.FromMillimeters(50)).Radians,
            tolerance: 1e-12
        );

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        DeckEdgeDrag drag = Of(Level.Machine with { Deck = new(), BeltDrag = null }).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DeckFriction"), drag.Drag.Missing);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltDrag"),
            Of(Level.Machine with { BeltDrag = null }).Value.ShareOfBeltDrag.Missing
        );
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), Of(Level.WithoutTension).Missing);
        Assert.Equal(
            Reason.ReadingsContradict,
            Of(Level.Machine with { BeltDrag = Force.Zero }).Value.ShareOfBeltDrag.Missing.Why
        );
        Assert.Throws<OutOfRangeException>(
            "front",
            () => DeckEdgeDrag.Of(Level.Machine, Angle.FromDegrees(40), Angle.Zero)
        );
    }

    private static Answer<DeckEdgeDrag> Of(Treadmill machine) =>
        DeckEdgeDrag.Of(machine, Angle.FromRadians(0.05), Angle.FromRadians(0.03));
}
