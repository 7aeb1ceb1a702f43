namespace TreadmillMech.Service.Checks;

/// <summary>An answer to a further question that may have none itself.</summary>
internal static class AnswerExtensions
{
    internal static Answer<T> Flat<T>(this Answer<Answer<T>> answer)
        where T : notnull => answer.Is(out Answer<T> inner) ? inner : answer.Missing;
}
