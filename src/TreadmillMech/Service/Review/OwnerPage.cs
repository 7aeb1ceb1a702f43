namespace TreadmillMech.Service.Review;

/// <summary>The owner's page: what it means to them, without forces or probabilities.</summary>
internal static class OwnerPage
{
    internal static IEnumerable<string> Of(Verdict verdict, IReadOnlyList<Finding> findings)
    {
        yield return verdict switch
        {
            Verdict.NotEnoughRead =>
                "It is not known yet whether the machine is fit for use: it was not tested with a person on it as it stands now. Nobody uses it before that test.",
            Verdict.Use => "The machine may be used.",
            Verdict.Restrict when OnlyTheUser(findings) =>
                "The machine may be used by people within the mass on its plate, and by nobody heavier.",
            Verdict.Restrict =>
                "The machine may be walked on with care; nobody runs on it until the work below is done.",
            _ => "Nobody steps on the machine until the work below is done.",
        };
        foreach (string sentence in findings.Select(Sentence).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            yield return sentence;
        }

        yield return "Keep the safety key clipped on, and the machine unplugged when nobody uses it.";
    }

    /// <summary>Whether a user beyond the plate is all that restricts the machine.</summary>
    internal static bool OnlyTheUser(IReadOnlyList<Finding> findings) =>
        findings.Where(f => f.Severity == Severity.Restrict).All(f => f.Subject == Subject.User);

    private static string? Sentence(Finding finding) =>
        finding.ForOwner
        ?? (finding.Subject, finding.Severity) switch
        {
            (Subject.RunningBelt, Severity.Restrict) =>
                "The running belt gives way, or may give way, under a heavy runner; it is being worked on in small steps.",
            (Subject.RunningBelt, Severity.Attend) =>
                "The tension of the running belt was looked at; a little work or a test may be left.",
            (Subject.DriveBelt, > Severity.Note) => "The belt between motor and roller needs work or replacement.",
            (Subject.Rollers, > Severity.Note) => "The rollers that carry the belt need work.",
            (Subject.Deck, Severity.Note) => "The board under the belt is in good order.",
            (Subject.Deck, _) => "The board under the belt needs service: it costs energy and wears the motor.",
            (Subject.Tracking, _) => "The belt wanders to one side and is being centred.",
            (Subject.Motor, > Severity.Note) => "The motor needs to be looked at by a qualified person.",
            (Subject.User, Severity.Restrict) =>
                "The machine is not made for users as heavy as the one it was asked for.",
            (Subject.Speed, _) => "The speed on the display is not the speed of the belt and needs to be set.",
            (Subject.Supply, _) => "The electrical outlet needs to be looked at by a qualified person.",
            _ => null,
        };
}
