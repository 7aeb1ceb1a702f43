using TreadmillMech.Json;
using TreadmillMech.Model;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.WebApi;

/// <summary>The questions that can be asked.</summary>
internal static class Endpoints
{
    private const string Json = "application/json";
    private const string SchemaType = "application/schema+json";

    internal static void Map(WebApplication app)
    {
        app.MapPost("/operating-point", PointAsync)
            .Accepts<PointRequest>(Json)
            .Produces<OperatingPoint>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .WithName("OperatingPoint")
            .WithSummary("What a machine does under a demand: pulls, tensions, margins, currents.")
            .WithDescription("Machine and demand as in a visit file, see /schemas/visit. What is not known says so.");
        app.MapPost("/visit-sheet", SheetAsync)
            .Accepts<VisitFile>(Json)
            .Produces<SheetResponse>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .WithName("VisitSheet")
            .WithSummary("What a visit comes to: verdict, findings, causes, next steps, cautions.")
            .WithDescription("The body is a visit file, see /schemas/visit. The maker's manual comes first.");
        app.MapGet(
                "/inputs",
                static () => TypedResults.Ok<IReadOnlyList<TableRow>>([.. Inputs.All.Select(TableRow.Of)])
            )
            .WithName("Inputs")
            .WithSummary("The inputs of the model: names, units and permitted ranges.");
        app.MapGet(
                "/outputs",
                static () => TypedResults.Ok<IReadOnlyList<TableRow>>([.. Outputs.All.Select(TableRow.Of)])
            )
            .WithName("Outputs")
            .WithSummary("The outputs of the model: names and units.");
        app.MapGet("/schemas/visit", static () => TypedResults.Text(VisitFile.Schema, SchemaType))
            .WithName("VisitSchema")
            .WithSummary("The JSON schema of a visit file.");
        app.MapGet("/schemas/machine", static () => TypedResults.Text(MachineFile.Schema, SchemaType))
            .WithName("MachineSchema")
            .WithSummary("The JSON schema of a machine file.");
    }

    private static async Task<IResult> PointAsync(HttpRequest request, CancellationToken ended)
    {
        Body body = await Body.ReadAsync(request, ended);
        return body.Refused
            ?? (
                PointReader.Read(body.Utf8, out IReadOnlyList<BadField> bad) is { } asked
                    ? TypedResults.Json(asked.Machine.At(asked.Demand), ApiJson.Default.OperatingPoint)
                    : Problem.Of(bad)
            );
    }

    private static async Task<IResult> SheetAsync(HttpRequest request, CancellationToken ended)
    {
        Body body = await Body.ReadAsync(request, ended);
        if (body.Refused is { } refused)
        {
            return refused;
        }

        Parsed<VisitFile> parsed = VisitFile.ReadUtf8(body.Utf8);
        return parsed.Is(out VisitFile? file)
            ? TypedResults.Json(
                new SheetResponse(file.MachineName, VisitReview.Of(file.Visit)),
                ApiJson.Default.SheetResponse
            )
            : Problem.Of([.. parsed.Problems.Select(static p => new BadField(p.Path, p.Found, p.Expected, p.Line))]);
    }
}
