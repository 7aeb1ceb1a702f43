namespace TreadmillMech.Service.Checks;

/// <summary>Answers out of what may be unknown.</summary>
internal static class Inquiry
{
    /// <summary>The value, or the shortfall that names the unknown input.</summary>
    internal static Answer<T> Of<T>(T? value, string name)
        where T : struct => value is { } known ? known : new Shortfall(Reason.InputUnknown, name);

    /// <summary>A further question that may itself have no answer.</summary>
    internal static Answer<TNext> Ask<T, TNext>(this Answer<T> answer, Func<T, Answer<TNext>> next)
        where T : notnull
        where TNext : notnull => answer.Is(out T? value) ? next(value) : answer.Missing;

    /// <summary>The belt's stiffness [N] of a machine.</summary>
    internal static Answer<double> Stiffness(LoopGeometry loop) =>
        loop.Numbers.BeltStiffness.Value > 0
            ? loop.Numbers.BeltStiffness.Value
            : new Shortfall(Reason.InputUnknown, Model.Inputs.BeltStiffness.Name);

    /// <summary>Strand tension at rest above nothing [N]; a belt with less hangs loose.</summary>
    internal static Answer<double> TautTension(LoopGeometry loop) => loop.Tension.Ask(Taut);

    /// <summary>A tension above nothing [N].</summary>
    internal static Answer<double> Taut(double tension) =>
        tension > 0 ? tension : new Shortfall(Reason.SlackBelt, Model.Inputs.RestTension.Name, 0, tension, "N");
}
