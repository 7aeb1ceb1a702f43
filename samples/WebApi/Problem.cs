namespace TreadmillMech.Samples.WebApi;

/// <summary>Problem details (RFC 9457), with a list of the fields that cannot be taken.</summary>
internal static class Problem
{
    internal static IResult Of(IReadOnlyList<BadField> fields) =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status400BadRequest,
            title: "The body holds fields that cannot be taken.",
            extensions: [new("errors", fields)]
        );

    internal static IResult Of(int status, string title, string detail) =>
        TypedResults.Problem(statusCode: status, title: title, detail: detail);
}
