using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class DeckLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.FrictionForce)}",
            "By hand: a fifth of the weight of 80 kg, 784.532 N",
            Mark.Derived,
            156.9064,
            1e-9,
            "N",
            () => DeckLaws.FrictionForce<Real>(0.2, 80 * FreeFall)
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.FrictionPower)}",
            "By hand: mu 0.20, 80 kg, 10 km/h on the level, 156.9064 N x 10/3.6 m/s",
            Mark.Derived,
            435.9,
            0.05,
            "W",
            () => DeckLaws.FrictionPower<Real>(0.20, 80 * FreeFall, 10 / 3.6)
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.FrictionFromPull)}",
            "By hand: a mass that slides without pull on a 15 % grade has mu = tan theta",
            Mark.Derived,
            0.15,
            1e-12,
            "1",
            () => DeckLaws.FrictionFromPull<Real>(0, 80, Math.Atan(0.15))
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.FrictionFromPull)}",
            "By hand, ISO 21182's ratio on the level: 117.6798 N for 60 kg of 588.399 N",
            Mark.Derived,
            0.2,
            1e-12,
            "1",
            () => DeckLaws.FrictionFromPull<Real>(117.6798, 60, 0)
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.PullFromPower)}",
            "By hand: 300 W at 80 % are 240 W at the belt; at 2 m/s 120 N",
            Mark.Derived,
            120,
            1e-9,
            "N",
            () => DeckLaws.PullFromPower<Real>(300, 0.8, 2)
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.PullFromCurrent)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 7.1: 59.7 N m, here on a drum of 0.2 m "
                + "radius, hence 298.5 N; tolerance: half a unit of 59.7",
            Mark.Transcribed,
            298.5,
            0.25,
            "N",
            () => DeckLaws.PullFromCurrent<Real>(150, 125 / Rpm(3000), Rpm(3000), Rpm(3000) * 0.2)
        ),
        new(
            $"{nameof(DeckLaws)}.{nameof(DeckLaws.LubricantVolume)}",
            "By hand: 25 um on 0.5 m by 1.2 m",
            Mark.Derived,
            15,
            1e-9,
            "ml",
            () => DeckLaws.LubricantVolume<Real>(0.5 * 1.2, 25e-6) * 1e6
        ),
    ];
}
