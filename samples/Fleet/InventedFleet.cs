using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using nietras.SeparatedValues;
using Parquet;
using Parquet.Schema;
using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet;

/// <summary>An invented fleet: the same for the same seed. A share of its rows has a mistake, as files have.</summary>
internal static class InventedFleet
{
    // Header, mean, standard deviation and digits; cut at three deviations.
    private static readonly (string Header, double Mean, double Deviation, string Format)[] Numbers =
    [
        ("RestTension [N]", 900, 130, "F0"),
        ("LeftTurns", 0.15, 0.15, "F2"),
        ("RightTurns", 0.15, 0.15, "F2"),
        ("DriveRollerFriction", 0.34, 0.03, "F3"),
        ("DeckFriction", 0.19, 0.03, "F3"),
        ("BeltDrag [N]", 28, 5, "F1"),
        ("DriveBeltTension [N]", 300, 40, "F0"),
        ("DriveBeltFriction", 0.38, 0.025, "F3"),
        ("PersonMass [kg]", 78, 13, "F1"),
        ("BeltSpeed [km/h]", 9, 2.2, "F1"),
        ("Incline [°]", 0.6, 0.2, "F2"),
        ("StrikePosition [mm]", 400, 30, "F0"),
    ];

    internal static async Task WriteAsync(Request request, ProgressLine progress)
    {
        string path = request.File!;
        switch (Path.GetExtension(path).ToUpperInvariant())
        {
            case ".CSV":
                WriteCsv(path, request, progress);
                break;
            case ".PARQUET":
                await WriteParquetAsync(path, request, progress).ConfigureAwait(false);
                break;
            default:
                throw new FleetRefusedException($"{path}: expected .csv or .parquet");
        }

        progress.Show(1, request.Rows, last: true);
    }

    private static void WriteCsv(string path, Request request, ProgressLine progress)
    {
        using StreamWriter to = new(path, false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        using SepWriter writer = Sep.New(',').Writer(options => options with { Escape = true }).To(to);
        foreach ((long number, string[] texts) in Rows(request))
        {
            using SepWriter.Row row = writer.NewRow();
            row[FleetColumn.Machine].Set(Name(number));
            for (int i = 0; i < Numbers.Length; i++)
            {
                row[Numbers[i].Header].Set(texts[i]);
            }

            progress.Show((double)number / request.Rows, number);
        }
    }

    private static async Task WriteParquetAsync(string path, Request request, ProgressLine progress)
    {
        DataField machine = new DataField<string>(FleetColumn.Machine);
        DataField[] fields = [.. Numbers.Select(number => new DataField<double?>(number.Header))];
        FileStream stream = File.Create(path);
        await using ConfiguredAsyncDisposable closing = stream.ConfigureAwait(false);
        ParquetWriter writer = await ParquetWriter
            .CreateAsync(new ParquetSchema([machine, .. fields]), stream)
            .ConfigureAwait(false);
        await using ConfiguredAsyncDisposable ending = writer.ConfigureAwait(false);
        foreach ((long Number, string[] Texts)[] rows in Rows(request).Chunk(CsvFleet.RowsAChunk))
        {
            using ParquetRowGroupWriter group = writer.CreateRowGroup();
            string[] names = [.. rows.Select(row => Name(row.Number))];
            await group.WriteAsync(machine, names).ConfigureAwait(false);
            for (int i = 0; i < fields.Length; i++)
            {
                double?[] values = [.. rows.Select(row => Number(row.Texts[i]))];
                await group.WriteAsync<double>(fields[i], values.AsMemory()).ConfigureAwait(false);
            }

            group.CompleteValidate();
            progress.Show((double)rows[^1].Number / request.Rows, rows[^1].Number);
        }
    }

    private static string Name(long number) => string.Create(CultureInfo.InvariantCulture, $"unit {number:D7}");

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;

    private static IEnumerable<(long Number, string[] Texts)> Rows(Request request)
    {
        // A seeded generator gives the same numbers everywhere.
        Random random = new(request.Seed);
        for (long number = 1; number <= request.Rows; number++)
        {
            int spoilt = random.NextDouble() < request.Bad ? random.Next(Numbers.Length) : -1;
            string[] texts = new string[Numbers.Length];
            for (int i = 0; i < texts.Length; i++)
            {
                (_, double mean, double deviation, string format) = Numbers[i];
                double value = mean + (deviation * Math.Clamp(Normal(random), -3, 3));
                texts[i] = value.ToString(format, CultureInfo.InvariantCulture);
            }

            if (spoilt >= 0)
            {
                texts[spoilt] = Spoil(random, texts[spoilt]);
            }

            yield return (number, texts);
        }
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static string Spoil(Random random, string text) =>
        random.Next(4) switch
        {
            0 => "",
            1 => "not read",
            2 => "9000" + text.TrimStart('-'),
            _ => "-9000" + text.TrimStart('-'),
        };
}
