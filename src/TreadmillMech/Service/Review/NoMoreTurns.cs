namespace TreadmillMech.Service.Review;

/// <summary>What to do where the belt slips and no further turn may be given, by what ends the turns.</summary>
internal static class NoMoreTurns
{
    private const string Glaze =
        "Look at the roller's face and at the underside of the running belt for glaze; a glazed belt is replaced.";

    internal static NextStep Of(VisitFacts facts, TensionBudget budget) =>
        budget.Limit switch
        {
            TurnLimit.HardBolt => HardBolt(facts),
            TurnLimit.Thread => Thread(facts),
            TurnLimit.Elongation => Tight(
                "the running belt is stretched as far as it should be, and more tension goes into the bearings"
            ),
            TurnLimit.EarlierTension => Tight("the belt is tighter than an earlier visit left it, when it held"),
            _ => Tight($"the turns of this visit are used, and the {facts.Say.Drive} holds"),
        };

    internal static NextStep HardBolt(VisitFacts facts) =>
        new()
        {
            Action =
                $"Do not tighten against {facts.Say.HardBolt}. Take its tension off, screw it out, and look at thread, nut and adjuster for dirt, rust and bends; clean it, or replace bolt and nut together.",
            Expect = "A bolt that turns evenly by hand over the thread it needs; then the ladder goes on.",
            StopAt = "Stop at a torn thread or a cracked adjuster: the frame's part is for the maker's service.",
            Undo = "Screw it in to the mark or the count of turns it came from.",
            EffortMinutes = 20,
            Cautions = [Cautions.Unplug, Cautions.StandStill],
        };

    internal static NextStep Thread(VisitFacts facts) =>
        new()
        {
            Action =
                $"Do not tighten further: there is no thread left{(facts.Bolts.TurnHard ? ", and a bolt at its end turns hard" : "")}. Measure the belt's marks or loop length; a belt stretched that far is replaced.",
            Expect = "With a new belt, thread left for tightening and a test that holds.",
            StopAt = "Do not lengthen the adjustment with spacers or longer bolts.",
            EffortMinutes = 15,
            Cautions = [Cautions.Unplug, Cautions.StandStill],
        };

    /// <summary>There is thread for a turn or so, but the belt is slacker than that.</summary>
    internal static NextStep ThreadTooShort(VisitFacts facts) =>
        Thread(facts) with
        {
            Action =
                "Do not tighten: the thread left ends before the belt holds. Measure the belt's marks or loop length; a belt stretched that far is replaced.",
        };

    private static NextStep Tight(string why) =>
        new()
        {
            Action = $"Do not tighten further: {why}. {Glaze}",
            Expect = "With a belt that grips, a test that holds at fewer turns.",
            StopAt = "Do not exceed that limit to hide a worn belt.",
            EffortMinutes = 15,
            Cautions = [Cautions.Unplug, Cautions.StandStill],
        };
}
