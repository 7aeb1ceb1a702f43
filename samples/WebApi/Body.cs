namespace TreadmillMech.Samples.WebApi;

/// <summary>The body of a request as bytes, or why it is not taken.</summary>
internal sealed record Body(byte[] Utf8, IResult? Refused)
{
    internal static async Task<Body> ReadAsync(HttpRequest request, CancellationToken ended)
    {
        if (!request.HasJsonContentType())
        {
            return new(
                [],
                Problem.Of(
                    StatusCodes.Status415UnsupportedMediaType,
                    "The body is not JSON.",
                    $"Found the content type \"{request.ContentType}\"; expected \"application/json\"."
                )
            );
        }

        using MemoryStream copy = new();
        try
        {
            await request.Body.CopyToAsync(copy, ended);
        }
        catch (BadHttpRequestException broken) when (broken.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return new(
                [],
                Problem.Of(
                    broken.StatusCode,
                    "The body is too large.",
                    $"Expected at most {Api.MostBytes} bytes; a visit needs some ten thousand."
                )
            );
        }

        return new(copy.ToArray(), null);
    }
}
