using System.Globalization;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>What was not looked at, and would tell the causes apart: by how much surer the first of them would be.</summary>
/// <remarks>
/// With the probabilities $p(c)$ of the causes as they stand, the first is right with $\max_c p(c)$; with a look whose
/// outcomes $o$ have the chances $p(o \mid c)$ it is right with $\sum_o \max_c p(c)\,p(o \mid c)$. Minutes are common
/// practice.
/// </remarks>
internal static class TellingLooks
{
    /// <summary>How the gain of a look begins.</summary>
    internal const string GainBegins = "The cause that stands first";

    private const int Most = 2;

    // No look raises a cause below this one to the first place.
    private const double LeastProbability = 1e-4;
    private const int Steps = 40;
    private const double Spreads = 4;

    // Errors of a thermometer in the hand [K] and of a straightedge [mm], as the evidence takes them.
    private const double Bearings = 2;
    private const double Case = 3;
    private const double Straightedge = 0.1;

    private static readonly Cause[] All = Enum.GetValues<Cause>();

    /// <summary>Symptoms that nobody has to provoke: they are seen or heard on a machine that stands, or runs empty.</summary>
    private static readonly (Symptom Symptom, string How)[] Plain =
    [
        (Symptom.HighSqueal, "Listen to the machine as somebody steps onto it within the plate"),
        (Symptom.Rumble, "Listen to the empty machine"),
        (Symptom.KnockEachTurn, "Listen to the empty machine"),
        (Symptom.PulleyMoves, "Machine unplugged, hood open, try the pulleys by hand"),
        (Symptom.GlazedUnderside, "Machine unplugged, look at the underside of the running belt"),
        (Symptom.CurledEdge, "Machine unplugged, look along both edges of the running belt"),
    ];

    internal static IEnumerable<ReadingProposal> Of(VisitFacts facts, IReadOnlyList<RankedCause> causes)
    {
        RankedCause[] possible = [.. causes.Where(static c => c.Probability > LeastProbability)];
        double now = possible[0].Probability;
        return 1 - now <= facts.Options.FineEnough.Value
            ? []
            : Open(facts)
                .Select(l => (Look: l, After: After(possible, l.Outcomes)))
                .Where(l => l.After - now >= facts.Options.WorthReading.Value * (1 - now))
                .OrderByDescending(l => (l.After - now) / l.Look.Lasts)
                .Take(Most)
                .Select(l => new ReadingProposal(l.Look.Reading, l.Look.Settles, Gain(now, l.After), l.Look.Lasts));
    }

    private static double After(IReadOnlyList<RankedCause> possible, IEnumerable<Func<Cause, double>> outcomes) =>
        outcomes.Sum(chance => possible.Max(c => c.Probability * chance(c.Cause)));

    private static string Gain(double now, double after) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{GainBegins} is right in {100 * now:0} of 100 such visits now, in {100 * after:0} with it."
        );

    private static IEnumerable<Look> Open(VisitFacts facts)
    {
        bool Wiped(WipedPlace place) => facts.Used<WipeReading>().Any(w => w.Place == place);
        if (facts.Slip.Tests.Count == 0)
        {
            yield return new(
                $"One slip test under {facts.Say.TestDemand}.",
                "Whether a belt gives way.",
                4,
                Of(SlipEvidence.GivesWay)
            );
        }

        if (!Wiped(WipedPlace.BeltTop))
        {
            yield return new(
                "Machine unplugged, draw a dry white cloth over the top of the running belt.",
                "Whether there is oil where people step.",
                1,
                Of(OilEvidence.OnTop)
            );
        }

        if (!Wiped(WipedPlace.BeltUnderside))
        {
            yield return new(
                "Machine unplugged, draw a dry white cloth along the underside of the running belt.",
                "Whether it is wet with lubricant.",
                2,
                Of(OilEvidence.Underneath)
            );
        }

        if (facts.Visit.Machine.DriveBelt is not null && !facts.Used<DriveBeltReading>().Any())
        {
            yield return new(
                "Machine unplugged, open the hood and look at the drive belt's ribs all around.",
                "Whether it is cracked or glazed.",
                5,
                [
                    DriveBeltEvidence.Cracked.Under,
                    static c => (1 - DriveBeltEvidence.Cracked.Under(c)) * DriveBeltEvidence.Glazed.Under(c),
                    static c => (1 - DriveBeltEvidence.Cracked.Under(c)) * (1 - DriveBeltEvidence.Glazed.Under(c)),
                ]
            );
        }

        if (facts.Bolts.ThreadTurnsAsFound is null)
        {
            yield return new(
                $"Machine unplugged, measure the thread left for {facts.Say.Bolts}.",
                "Whether they are at their end.",
                2,
                Of(TensionEvidence.TurnsOfThread, TensionEvidence.ThreadRead)
            );
        }

        foreach (Look look in Measured(facts).Concat(Symptoms(facts)))
        {
            yield return look;
        }
    }

    private static IEnumerable<Look> Measured(VisitFacts facts)
    {
        bool Felt(params WarmPlace[] places) => facts.Used<TemperatureReading>().Any(t => places.Contains(t.Place));
        if (!facts.Used<TrackingReading>().Any())
        {
            yield return new(
                "The drift of the empty belt at a walk, over twenty passes of its seam.",
                "Whether it runs off its centre.",
                3,
                Of(TrackingEvidence.Drifts)
            );
        }

        if (!Felt(WarmPlace.DriveRollerBearing) || !Felt(WarmPlace.TailRollerBearing))
        {
            yield return new(
                "Right after use, machine unplugged, the warmth of both rollers' bearings above the air.",
                "Whether a bearing is failing.",
                3,
                Of(RollerEvidence.Warmth, Bearings)
            );
        }

        if (!Felt(WarmPlace.MotorCase, WarmPlace.MotorWinding))
        {
            yield return new(
                "Right after use, machine unplugged, the warmth of the motor's case above the air.",
                "Whether the motor works too hard.",
                3,
                Of(MotorEvidence.Warmth, Case)
            );
        }

        if (!facts.Used<GrooveReading>().Any())
        {
            yield return new(
                "Machine unplugged, a straightedge across the deck under the belt: the depth of its groove.",
                "Whether the deck is worn.",
                4,
                Of(DeckEvidence.Groove, Straightedge)
            );
        }

        if (!facts.Used<MainsVoltageReading>().Any())
        {
            yield return new(
                $"The socket's voltage, unloaded and under {facts.Say.TestDemand}.",
                "Whether the supply is weak.",
                4,
                Of(SupplyEvidence.Sag, facts.Options.MeterVoltage.Value * Math.Sqrt(2))
            );
        }

        if (!facts.Used<InclineReading>().Any())
        {
            yield return new(
                "The grade of the deck by a level, beside the displayed one.",
                "Whether the display is out of calibration.",
                4,
                Of(CalibrationEvidence.InclineOff)
            );
        }
    }

    private static IEnumerable<Look> Symptoms(VisitFacts facts)
    {
        HashSet<Symptom> asked = [.. facts.Used<SymptomReading>().Select(static s => s.Symptom)];
        foreach ((Symptom symptom, string how) in Plain.Where(p => !asked.Contains(p.Symptom)))
        {
            (Chance chance, string there) = SymptomEvidence.At(symptom);
            yield return new(
                $"{how}, and note either way: \"{there}\"",
                "Whether that is so.",
                symptom == Symptom.PulleyMoves ? 5 : 2,
                Of(chance)
            );
        }
    }

    private static IEnumerable<Func<Cause, double>> Of(Chance chance) => [chance.Under, c => 1 - chance.Under(c)];

    /// <summary>A number as outcomes side by side, each a step wide.</summary>
    private static IEnumerable<Func<Cause, double>> Of(Bell bell, double uncertainty)
    {
        double low = All.Min(c => bell.Under(c).Mean - (Spreads * bell.Under(c).Spread));
        double high = All.Max(c => bell.Under(c).Mean + (Spreads * bell.Under(c).Spread));
        double step = (high - low) / Steps;
        return Enumerable
            .Range(0, Steps)
            .Select(i => (Func<Cause, double>)(c => step * bell.Density(c, low + ((i + 0.5) * step), uncertainty)));
    }

    /// <param name="Reading">What to look at and how.</param>
    /// <param name="Settles">What it settles.</param>
    /// <param name="Lasts">How long it takes [min].</param>
    /// <param name="Outcomes">The probability of each outcome under each cause.</param>
    private sealed record Look(string Reading, string Settles, int Lasts, IEnumerable<Func<Cause, double>> Outcomes);
}
