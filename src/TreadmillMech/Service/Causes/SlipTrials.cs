using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Causes;

/// <summary>What was tried against slip in a visit, with its outcome, from the events in order.</summary>
internal static class SlipTrials
{
    internal static List<SlipTrial> Of(IEnumerable<VisitEvent> events, double worthJudging)
    {
        List<SlipTrial> trials = [];
        bool slipping = false;
        HashSet<TrialWork> work = [];
        double turns = 0;
        foreach (VisitEvent happened in events)
        {
            switch (happened)
            {
                case SlipTestReading test:
                    if (slipping && work.Count == 1)
                    {
                        TrialWork only = work.Single();
                        if (!test.Slipped || only != TrialWork.Turns || turns >= worthJudging)
                        {
                            trials.RemoveAll(t => t.Work == only);
                            trials.Add(new(only, turns, !test.Slipped));
                        }
                    }

                    // What slips again without other work was not cured by the turns before.
                    if (test.Slipped && !slipping && work.IsSubsetOf([TrialWork.Turns]) && turns >= 0)
                    {
                        trials.RemoveAll(static t => t is { Work: TrialWork.Turns, Cured: true });
                    }

                    // Turns add up over the rungs of a ladder; other work is judged by the next test alone.
                    bool ladder = test.Slipped && work.IsSubsetOf([TrialWork.Turns]);
                    turns = ladder ? turns : 0;
                    work = ladder ? work : [];
                    slipping = test.Slipped;
                    break;
                case TakeUpAction { By: TurnedBy.Technician } turned:
                    turns += 0.5 * (turned.LeftTurns + turned.RightTurns);
                    work.Add(TrialWork.Turns);
                    break;
                case CleanAction { Place: CleanedPlace.Rollers }:
                    work.Add(TrialWork.Cleaning);
                    break;
                case DriveBeltAction:
                    work.Add(TrialWork.DriveBelt);
                    break;
                default:
                    break;
            }
        }

        return trials;
    }
}
