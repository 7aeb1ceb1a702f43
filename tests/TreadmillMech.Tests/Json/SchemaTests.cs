using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Tests.Laws;
using TreadmillMech.Tests.Service;
using TreadmillMech.Tests.ServiceVisit;

namespace TreadmillMech.Tests.Json;

/// <summary>The published schemas, judged by a validator that knows nothing of this library.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Visit = JsonSchema.FromText(VisitFile.Schema);
    private static readonly JsonSchema Machine = JsonSchema.FromText(MachineFile.Schema);

    private static readonly (string Name, string Text)[] Files =
    [
        ("visit-1.schema.json", VisitFile.Schema),
        ("machine-1.schema.json", MachineFile.Schema),
    ];

    public static TheoryData<string> Visits => [.. Bundled.All.Select(static visit => visit.Name), "help"];

    private static string Folder => Path.Combine(SourceTree.Root(), "docs", "schemas");

    [Fact]
    public void ThePublishedFilesAreUpToDate()
    {
        foreach ((string name, string text) in Files)
        {
            Assert.Equal(text, File.ReadAllText(Path.Combine(Folder, name)));
        }

        Assert.Equal(Files.Length, Directory.GetFiles(Folder).Length);
    }

    [Fact(Explicit = true)]
    public void WritesTheSchemas()
    {
        Directory.CreateDirectory(Folder);
        foreach ((string name, string text) in Files)
        {
            File.WriteAllText(Path.Combine(Folder, name), text);
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void EveryBundledVisitIsValidAsItStandsAndAsItIsWritten(string name)
    {
        Assert.True(IsValid(Visit, Text(name)));
        Assert.True(IsValid(Visit, VisitFile.Read(Text(name)).Value.Write()));
    }

    [Fact]
    public void NoMisspeltFieldIsValid()
    {
        int tried = 0;
        foreach ((JsonNode root, JsonObject owner, string key) in EachField())
        {
            JsonNode? value = owner[key];
            owner.Remove(key);
            owner[key + "x"] = value;
            Assert.False(IsValid(Visit, root.ToJsonString()), $"{key}x passed");
            tried++;
        }

        Assert.True(tried > 150, $"Only {tried} fields were misspelt.");
    }

    // Where the values are changed for others the reader may be stricter, for it knows ranges; never the other way round.
    [Fact]
    public void WhatTheSchemaRefusesTheReaderRefusesToo()
    {
        string[] others = ["{}", "-7", "\"\"", "\"20\"", "\"1,5 m\"", "\"7 %\""];
        int tried = 0;
        int refused = 0;
        foreach ((JsonNode root, JsonObject owner, string key) in EachField())
        {
            owner[key] = JsonNode.Parse(others[tried++ % others.Length]);
            string changed = root.ToJsonString();
            if (!IsValid(Visit, changed))
            {
                refused++;
                Assert.False(VisitFile.Read(changed).Found, $"{key}: {owner[key]}");
            }
        }

        Assert.True(refused > 100, $"Only {refused} of {tried} were refused.");
    }

    [Fact]
    public void AMachineFileIsValidAndAMisspeltOneIsNot()
    {
        string text = new MachineFile { MachineName = "Any 1", Machine = Machines.Known }.Write();
        Assert.True(IsValid(Machine, text));
        Assert.False(IsValid(Machine, text.Replace("\"deck\"", "\"dekc\"", StringComparison.Ordinal)));
        Assert.False(IsValid(Visit, text));
    }

    [Fact]
    public void EveryObjectOfTheSchemaIsInTheListOfFields()
    {
        using JsonDocument schema = JsonDocument.Parse(VisitFile.Schema);
        Assert.Equal(
            schema
                .RootElement.GetProperty("$defs")
                .EnumerateObject()
                .Select(static d => d.Name)
                .Order(StringComparer.Ordinal),
            VisitFile
                .Fields.Select(static field => field.Owner == "treadmill" ? "machine" : field.Owner)
                .Distinct()
                .Where(static owner => owner != "visit")
                .Order(StringComparer.Ordinal)
        );
    }

    private static bool IsValid(JsonSchema schema, string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }

    private static string Text(string name) => name == "help" ? ExampleVisit.Json : Sample.Text(name);

    /// <summary>
    /// Each field of the example in a document of its own to be changed: those of machine and demand without events, those of
    /// an event with this event alone, for a validator tries every kind of event on every event.
    /// </summary>
    private static IEnumerable<(JsonNode Root, JsonObject Owner, string Key)> EachField()
    {
        int events = JsonNode.Parse(ExampleVisit.Json)!["events"]!.AsArray().Count;
        for (int kept = -1; kept < events; kept++)
        {
            int fields = Fields(Place(Document(kept), kept)).Count();
            for (int i = 0; i < fields; i++)
            {
                JsonNode root = Document(kept);
                (JsonObject owner, string key) = Fields(Place(root, kept)).ElementAt(i);
                yield return (root, owner, key);
            }
        }
    }

    private static JsonNode Place(JsonNode root, int kept) => kept < 0 ? root : root["events"]!;

    private static JsonNode Document(int kept)
    {
        JsonNode root = JsonNode.Parse(ExampleVisit.Json)!;
        JsonNode? alone = kept < 0 ? null : root["events"]![kept]!.DeepClone();
        root["events"] = alone is null ? [] : new JsonArray(alone);
        return root;
    }

    private static IEnumerable<(JsonObject Owner, string Key)> Fields(JsonNode node) =>
        node switch
        {
            JsonObject fields => fields
                .Select(field => (fields, field.Key))
                .Concat(
                    fields
                        .Where(static field => field.Value is not null)
                        .SelectMany(static field => Fields(field.Value!))
                )
                .ToList(),
            JsonArray items => items.OfType<JsonNode>().SelectMany(Fields),
            _ => [],
        };
}
