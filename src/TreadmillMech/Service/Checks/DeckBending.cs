using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How far a deck gives way under a load in the middle between its supports, and what stress it bears.</summary>
public sealed record DeckBending
{
    /// <summary>Bending of the board alone; no answer where its elastic modulus is not known.</summary>
    public required Answer<Length> Bending { get; init; }

    /// <summary>Travel of the cushions alone; no answer where their stiffness is not known.</summary>
    public required Answer<Length> CushionTravel { get; init; }

    /// <summary>Both together.</summary>
    public required Answer<Length> Deflection { get; init; }

    /// <summary>Stiffness of deck and cushions together, as a fall on it meets.</summary>
    public required Answer<ForcePerLength> Stiffness { get; init; }

    /// <summary>Bending stress at the face of the board.</summary>
    public required Pressure Stress { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DeckBending),
            (nameof(Bending), Bending),
            (nameof(CushionTravel), CushionTravel),
            (nameof(Deflection), Deflection),
            (nameof(Stiffness), Stiffness),
            (nameof(Stress), Stress)
        );

    /// <summary>The bending of a deck.</summary>
    /// <param name="board">The deck.</param>
    /// <param name="load">Load, 1 N to 50 kN, for instance <see cref="OperatingPoint.PeakFootForce"/>.</param>
    /// <exception cref="ArgumentNullException">The board is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public static DeckBending Of(DeckBoard board, Force load)
    {
        ArgumentNullException.ThrowIfNull(board);
        double force = Si.Force.ToSi(Guard.Within(load, Si.Force, 1, 5e4, nameof(load)));
        double thickness = Si.Length.ToSi(board.Thickness);
        double span = Si.Length.ToSi(board.SupportSpan);
        double second = DeckWearLaws.RectangleSecondMoment<Real>(Si.Length.ToSi(board.Width), thickness);
        Answer<double> modulus = Inquiry
            .Of(board.ElasticModulus, nameof(DeckBoard.ElasticModulus))
            .Then(Si.Pressure.ToSi);
        Answer<double> cushion = Inquiry
            .Of(board.CushionStiffness, nameof(DeckBoard.CushionStiffness))
            .Then(Si.ForcePerLength.ToSi);
        Answer<double> both = modulus.Ask(e => cushion.Then(k => Travel(e, k)));

        // A load in the middle is one on a strip of no width.
        double moment = RollerLaws.BendingMoment<Real>(force, 0, span);
        return new()
        {
            Bending = modulus.Then(e => Si.Length.FromSi(Travel(e, double.PositiveInfinity))),
            CushionTravel = cushion.Then(k => Si.Length.FromSi(Travel(double.PositiveInfinity, k))),
            Deflection = both.Then(Si.Length.FromSi),
            Stiffness = both.Then(travel => Si.ForcePerLength.FromSi(force / travel)),
            Stress = Si.Pressure.FromSi(RollerLaws.BendingStress<Real>(moment, thickness, second)),
        };

        double Travel(double elastic, double support) =>
            DeckWearLaws.MidSpanDeflection<Real>(force, span, elastic, second, support);
    }
}
