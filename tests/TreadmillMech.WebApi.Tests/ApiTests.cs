using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Model;
using TreadmillMech.Parts;
using TreadmillMech.Samples.WebApi;
using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.WebApi.Tests;

/// <summary>The service, started on a free port and asked over the loopback.</summary>
public sealed class ApiTests : IAsyncLifetime
{
    private const string Json = "application/json";
    private const string Visit = "slips-under-heavy-user.json";

    private static readonly Treadmill Machine = new()
    {
        Belt = new()
        {
            Width = Length.FromInches(20),
            RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(8),
        },
        DriveRoller = new() { Diameter = Length.FromMillimeters(50), Friction = 0.3 },
        TailRoller = new() { Diameter = Length.FromMillimeters(45) },
        CentreDistance = Length.FromMeters(1.35),
        TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25") },
        Deck = new() { Friction = 0.2 },
        BeltDrag = Force.FromNewtons(20),
        RestTension = Force.FromNewtons(1000),
    };

    private static readonly Demand Run = new()
    {
        Person = new() { Mass = Mass.FromKilograms(118) },
        Speed = Speed.FromMilesPerHour(8),
    };

    private readonly WebApplication app = Api.Build([
        "--urls",
        "http://127.0.0.1:0",
        "--Logging:LogLevel:Default",
        "None",
    ]);
    private readonly HttpClient client = new();

    private static CancellationToken Ended => TestContext.Current.CancellationToken;

    private static string Asked =>
        $$"""
            {
              "machine": {{JsonSerializer.Serialize(Machine)}},
              "demand": {{JsonSerializer.Serialize(Run)}}
            }
            """;

    public async ValueTask InitializeAsync()
    {
        await app.StartAsync(Ended);
        client.BaseAddress = new(app.Urls.Single());
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await app.DisposeAsync();
    }

    [Fact]
    public async Task AMachineAndADemandGiveTheOperatingPoint()
    {
        (HttpStatusCode status, JsonElement answer) = await PostAsync("/operating-point", Asked);
        Assert.Equal(HttpStatusCode.OK, status);
        OperatingPoint point = Machine.At(Run);
        Assert.Equal(point.BeltMargin.Value, answer.GetProperty("BeltMargin").GetDouble());
        Assert.Equal("input unknown", answer.GetProperty("MeanCurrent").GetProperty("missing").GetString());
        Assert.Equal(JsonSerializer.Serialize(point), answer.GetRawText());
    }

    [Fact]
    public async Task AVisitGivesItsSheet()
    {
        (HttpStatusCode status, JsonElement answer) = await PostAsync("/visit-sheet", Text(Visit));
        Assert.Equal(HttpStatusCode.OK, status);
        VisitFile file = VisitFile.Read(Text(Visit)).Value;
        Assert.Equal(file.MachineName, answer.GetProperty("machine").GetString());
        VisitSheet sheet = answer.GetProperty("sheet").Deserialize<VisitSheet>()!;
        VisitSheet own = VisitReview.Of(file.Visit);
        Assert.Equal(own.Verdict, sheet.Verdict);
        Assert.Equal(own.VerdictText, sheet.VerdictText);
        Assert.Equal(own.SafetyNow.AsEnumerable(), sheet.SafetyNow);
        Assert.NotEmpty(sheet.SafetyNow);
        Assert.Equal(JsonSerializer.Serialize(own), JsonSerializer.Serialize(sheet));
    }

    [Fact]
    public async Task TheTablesHaveAllRows()
    {
        JsonElement inputs = await GetAsync("/inputs");
        Assert.Equal(Inputs.All.Select(static row => row.Name), Names(inputs));
        Assert.Equal(Inputs.BeltWidth.Range.To, inputs[Inputs.BeltWidth.Index].GetProperty("to").GetDouble());
        Assert.Equal(Outputs.All.Select(static row => row.Name), Names(await GetAsync("/outputs")));
        Assert.Equal(VisitFile.Schema, (await client.GetStringAsync("/schemas/visit", Ended)));
    }

    [Theory]
    [InlineData("\"20 in\"", "\"20 kg\"", "$.machine.runningBelt.width", "\"20 kg\"", "mm, cm, m, in or ft")]
    [InlineData("\"20 in\"", "\"50,8 cm\"", "$.machine.runningBelt.width", "with a comma", "a decimal point")]
    [InlineData("\"20 in\"", "\"5 m\"", "$.machine.runningBelt.width", "\"5 m\"", "0.2 m to 1.2 m")]
    [InlineData("\"width\"", "\"widht\"", "$.machine.runningBelt.widht", "\"widht\"", "\"width\"")]
    [InlineData("\"118 kg\"", "\"1180 kg\"", "$.demand.person.mass", "\"1180 kg\"", "10 kg to 350 kg")]
    [InlineData("\"demand\"", "\"dmand\"", "$.dmand", "dmand", "machine and demand")]
    [InlineData("\"demand\":", "\"demand\"", "$", "invalid", "machine and demand")]
    public async Task ABadFieldIsNamedWithItsValueAndWhatIsAllowed(
        string from,
        string to,
        string field,
        string value,
        string allowed
    )
    {
        string body = Asked.Replace(from, to, StringComparison.Ordinal);
        Assert.NotEqual(Asked, body);
        (HttpStatusCode status, JsonElement answer) = await PostAsync("/operating-point", body);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        JsonElement error = answer.GetProperty("errors").EnumerateArray().First();
        Assert.StartsWith(field, error.GetProperty("field").GetString(), StringComparison.Ordinal);
        Assert.Contains(value, error.GetProperty("value").GetString(), StringComparison.Ordinal);
        Assert.Contains(allowed, error.GetProperty("allowed").GetString(), StringComparison.Ordinal);
        Assert.True(error.GetProperty("line").GetInt32() > 0);
    }

    [Fact]
    public async Task EveryBadFieldOfAVisitIsNamedWithItsLine()
    {
        string body = Text(Visit)
            .Replace("\"118 kg\"", "\"118\"", StringComparison.Ordinal)
            .Replace("\"50 mm\"", "\"50\"", StringComparison.Ordinal);
        (HttpStatusCode status, JsonElement answer) = await PostAsync("/visit-sheet", body);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal(
            VisitFile.Read(body).Problems.Select(static p => (p.Path, p.Line)),
            answer
                .GetProperty("errors")
                .EnumerateArray()
                .Select(static e => (e.GetProperty("field").GetString()!, e.GetProperty("line").GetInt32()))
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"machine\":null,\"demand\":null}")]
    public async Task ABodyThatIsNoRequestIsRefused(string body)
    {
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync("/operating-point", body)).Status);
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync("/visit-sheet", body)).Status);
    }

    [Theory]
    [InlineData("/operating-point")]
    [InlineData("/visit-sheet")]
    public async Task ABodyThatIsNotJsonIsRefusedByItsType(string path) =>
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, (await PostAsync(path, Asked, "text/plain")).Status);

    [Theory]
    [InlineData("/operating-point")]
    [InlineData("/visit-sheet")]
    public async Task ABodyThatIsTooLargeIsRefused(string path) =>
        Assert.Equal(
            HttpStatusCode.RequestEntityTooLarge,
            (await PostAsync(path, new string(' ', Api.MostBytes + 1))).Status
        );

    [Fact]
    public async Task AnAddressThatIsNotThereIsAProblemToo()
    {
        using HttpResponseMessage response = await client.GetAsync(new Uri("/nothing", UriKind.Relative), Ended);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
    }

    // A build without the data of cultures has them by their marks only; that is what would spoil a number.
    [Fact]
    public async Task TheCultureOfTheServerHasNoSay()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.NumberGroupSeparator) = (",", ".");
        string expected = (await PostAsync("/operating-point", Asked)).Answer.GetRawText();
        string sheet = (await PostAsync("/visit-sheet", Text(Visit))).Answer.GetRawText();
        try
        {
            CultureInfo.DefaultThreadCurrentCulture = comma;
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(expected, (await PostAsync("/operating-point", Asked)).Answer.GetRawText());
            Assert.Equal(sheet, (await PostAsync("/visit-sheet", Text(Visit))).Answer.GetRawText());
        }
        finally
        {
            CultureInfo.DefaultThreadCurrentCulture = null;
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task TheDocumentNamesEveryAddress()
    {
        JsonElement document = await GetAsync("/openapi/v1.json");
        Assert.StartsWith("3.", document.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        Assert.Equal(
            ["/inputs", "/operating-point", "/outputs", "/schemas/machine", "/schemas/visit", "/visit-sheet"],
            document.GetProperty("paths").EnumerateObject().Select(static p => p.Name).Order(StringComparer.Ordinal)
        );
        JsonElement post = document.GetProperty("paths").GetProperty("/operating-point").GetProperty("post");
        Assert.True(post.GetProperty("responses").TryGetProperty("400", out _));
        Assert.True(post.GetProperty("requestBody").GetProperty("content").TryGetProperty(Json, out _));
    }

    private async Task<(HttpStatusCode Status, JsonElement Answer)> PostAsync(
        string path,
        string body,
        string type = Json
    )
    {
        using StringContent content = new(body, Encoding.UTF8);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        using HttpResponseMessage response = await client.PostAsync(new Uri(path, UriKind.Relative), content, Ended);
        string text = await response.Content.ReadAsStringAsync(Ended);
        if (!response.IsSuccessStatusCode)
        {
            Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        }

        using JsonDocument document = JsonDocument.Parse(text);
        return (response.StatusCode, document.RootElement.Clone());
    }

    private async Task<JsonElement> GetAsync(string path)
    {
        using JsonDocument document = JsonDocument.Parse(await client.GetStringAsync(path, Ended));
        return document.RootElement.Clone();
    }

    private static IEnumerable<string?> Names(JsonElement rows) =>
        rows.EnumerateArray().Select(static row => row.GetProperty("name").GetString());

    private static string Text(string name)
    {
        using Stream stream = typeof(ApiTests).Assembly.GetManifestResourceStream(name)!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
