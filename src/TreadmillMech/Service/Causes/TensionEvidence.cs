using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>How tight the running belt is, and what its bolts are like. Bells and chances: common practice, no source.</summary>
internal static class TensionEvidence
{
    /// <summary>Logarithm of the strand force at rest for each metre of width [N/m].</summary>
    private static readonly Bell PerWidth = new(
        4,
        Math.Log(2400),
        0.25,
        (Cause.RunningBeltSlack, Math.Log(1250), 0.25),
        (Cause.BoltsAtTheirEnd, Math.Log(1300), 0.3),
        (Cause.OverTightened, Math.Log(4800), 0.22)
    );

    private static readonly Chance Hard = new(0.03, (Cause.OverTightened, 0.5), (Cause.BoltsAtTheirEnd, 0.6));

    /// <summary>Turns that the thread left still allows: bolts at their end have less than one, or next to none.</summary>
    internal static readonly Bell TurnsOfThread = new(40, 12, 6, (Cause.BoltsAtTheirEnd, 0, 0.7));

    /// <summary>Standard uncertainty of a thread measured with a rule, in turns.</summary>
    internal const double ThreadRead = 0.3;

    private static readonly Chance Stretched = new(0.05, (Cause.BoltsAtTheirEnd, 0.8), (Cause.RunningBeltSlack, 0.15));

    private static readonly Chance ManyTurnsBefore = new(
        0.08,
        (Cause.OverTightened, 0.75),
        (Cause.DriveBeltSlack, 0.3),
        (Cause.DriveBeltGlazed, 0.3),
        (Cause.PulleyLoose, 0.3),
        (Cause.BoltsAtTheirEnd, 0.6)
    );

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        double width = Si.Length.ToSi(facts.Visit.Machine.Belt.Width);
        if (facts.TensionByLifts.Is(out Figure? tension) && tension.Value > 0)
        {
            // Of a belt that all but hangs loose the newtons are uncertain, not that it is slack.
            yield return PerWidth.Read(
                Math.Log(tension.Value / width),
                (tension.StandardUncertainty ?? 0) / Math.Max(tension.Value, width * Math.Exp(PerWidth.Lowest)),
                $"Strand tension at rest as found {tension}."
            );
        }

        if (facts.Used<BoltReading>().LastOrDefault() is { } bolts)
        {
            yield return Hard.Seen(
                bolts.Feel == BoltFeel.Hard,
                "A take-up bolt turns hard.",
                "The take-up bolts turn as always."
            );
        }

        if (facts.Bolts.ThreadTurnsAsFound is { } thread)
        {
            bool endsFirst = facts.ThreadEndsFirst;
            yield return TurnsOfThread.Read(
                endsFirst ? 0 : thread,
                ThreadRead,
                thread < facts.Options.TurnStep.Value ? "The take-up bolts are at the end of their thread."
                    : endsFirst
                        ? $"The thread left, {Words.Turns(thread, signed: false)}, ends before the running belt holds."
                    : $"There is thread left for {Words.Turns(thread, signed: false)}."
            ) with
            {
                Limit = facts.Options.TurnStep,
            };
        }

        if (facts.Used<MarksReading>().LastOrDefault() is { } marks)
        {
            double strain = BeltLifeLaws.MarkElongation<Real>(
                Si.Length.ToSi(marks.Distance),
                Si.Length.ToSi(marks.AsFitted)
            );
            yield return Stretched.Seen(
                strain > facts.Options.StretchedBelt.Value,
                $"The running belt has grown by {Words.Percent(strain)} since it was fitted.",
                $"The running belt has grown by no more than {Words.Percent(strain)} since it was fitted.",
                facts.Options.StretchedBelt.InPercent()
            );
        }

        if (facts.Bolts.TurnsBefore is { } before)
        {
            yield return ManyTurnsBefore.Seen(
                before > facts.Options.MostTurns.Value,
                $"{Words.Turns(before, signed: true)} were given before this visit.",
                $"No more than {Words.Turns(before, signed: true)} were given before this visit.",
                facts.Options.MostTurns
            );
        }
    }
}
