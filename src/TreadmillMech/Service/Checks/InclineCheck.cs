using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Grade of a deck from rise and run, against the floor and against the horizontal.</summary>
/// <remarks>The user climbs against the horizontal; a display mostly counts from the frame. A floor of 1 % is not rare.</remarks>
public sealed record InclineCheck
{
    /// <summary>Grade against the floor.</summary>
    public required Estimate<Ratio> AgainstFloor { get; init; }

    /// <summary>Grade against the horizontal; no answer where the floor's slope is not known.</summary>
    public required Answer<Estimate<Ratio>> AgainstHorizontal { get; init; }

    /// <summary>
    /// Grade on the display less the one against the horizontal, in parts of a grade: 1 % shown on the level is 1 %. No answer where
    /// either is not known.
    /// </summary>
    public required Answer<Estimate<Ratio>> DisplayError { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(InclineCheck),
            (nameof(AgainstFloor), AgainstFloor),
            (nameof(AgainstHorizontal), AgainstHorizontal),
            (nameof(DisplayError), DisplayError)
        );

    /// <summary>Checks the incline.</summary>
    /// <param name="rise">Rise of a front point of the deck over a rear one, from the floor, -0.5 m to 1 m.</param>
    /// <param name="run">Distance between both along the floor, 0.2 m to 3 m.</param>
    /// <param name="floorSlope">Slope of the floor, -10 % to 10 %, positive where it climbs to the front; null where not known.</param>
    /// <param name="display">Grade on the display, -10 % to 40 %; null where not read.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value or its uncertainty is outside its range.</exception>
    public static InclineCheck Of(
        Estimate<Length> rise,
        Estimate<Length> run,
        Estimate<Ratio>? floorSlope = null,
        Ratio? display = null
    )
    {
        (double Value, double Uncertainty) up = ReadValue.Read(rise, Si.Length, -0.5, 1);
        (double Value, double Uncertainty) along = ReadValue.Read(run, Si.Length, 0.2, 3);
        Answer<Estimate<Ratio>> level = floorSlope is { } slope
            ? ReadValue.Of(
                Si.Ratio,
                static x => MeasurementLaws.Grade(x[0], x[1], x[2]),
                up,
                along,
                ReadValue.Read(slope, Si.Ratio, -0.1, 0.1)
            )
            : new Shortfall(Reason.InputUnknown, nameof(floorSlope));
        double? shown = display is { } read
            ? Si.Ratio.ToSi(Guard.Within(read, Si.Ratio, -0.1, 0.4, nameof(display)))
            : null;
        return new()
        {
            AgainstFloor = ReadValue.Of(
                Si.Ratio,
                static x => MeasurementLaws.Grade<Dual<Real>>(x[0], x[1], 0),
                up,
                along
            ),
            AgainstHorizontal = level,
            DisplayError = shown is { } grade
                ? level.Then(l => new Estimate<Ratio>(
                    Si.Ratio.FromSi(grade - Si.Ratio.ToSi(l.Value)),
                    l.StandardUncertainty
                ))
                : new Shortfall(Reason.InputUnknown, nameof(display)),
        };
    }
}
