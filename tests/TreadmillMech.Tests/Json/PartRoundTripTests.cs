using System.Text.Json;
using FsCheck.Xunit;
using TreadmillMech.Json;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Tests.Json;

/// <summary>A part that is written is read as an equal part again, through every way into JSON.</summary>
public sealed class PartRoundTripTests
{
    /// <summary>Every part that has a form: classes of the parts, machine and demand.</summary>
    internal static readonly Type[] Types =
    [
        .. JsonForms.Types.Where(static type =>
            type.IsClass && (type.Namespace == "TreadmillMech.Parts" || type.Namespace == "TreadmillMech")
        ),
    ];

    public static TheoryData<string> Names => [.. Types.Select(static type => type.Name)];

    [Fact]
    public void EveryPartHasAForm()
    {
        Assert.Superset(
            typeof(Treadmill)
                .Assembly.GetExportedTypes()
                .Where(static type => type.IsClass && !type.IsAbstract && type.Namespace == "TreadmillMech.Parts")
                .ToHashSet(),
            Types.ToHashSet()
        );
        Assert.Contains(typeof(Treadmill), Types);
        Assert.Contains(typeof(Demand), Types);
    }

    [Property(MaxTest = 60)]
    public void EveryPartComesBackToTheLastBit(int seed)
    {
        Random random = new(seed);
        foreach (Type type in Types)
        {
            object part = RandomParts.Any(type, random);
            string generated = JsonSerializer.Serialize(part, type, TreadmillJsonContext.Default);
            Assert.Equal(part, JsonSerializer.Deserialize(generated, type, TreadmillJsonContext.Default));

            // Without any options: the type itself says how it is written.
            string plain = JsonSerializer.Serialize(part, type);
            Assert.Equal(part, JsonSerializer.Deserialize(plain, type));
            Assert.Equal(part, JsonSerializer.Deserialize(generated, type, TreadmillJson.Options));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryPropertyIsWritten(string name)
    {
        Type type = Types.Single(type => type.Name == name);
        object part = RandomParts.Any(type, new(1), complete: true);
        JsonElement json = JsonSerializer.SerializeToElement(part, type, TreadmillJsonContext.Default);
        if (json.ValueKind == JsonValueKind.String)
        {
            Assert.Equal(nameof(TreadmillMech.Parts.ScrewThread), name);
            return;
        }

        Assert.Equal(
            Fields(type).Order(StringComparer.Ordinal),
            json.EnumerateObject()
                .Select(static member => member.Name == "lead" ? "thread" : member.Name)
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void AnUnknownValueIsLeftOutAndADefaultIsWritten()
    {
        string json = JsonSerializer.Serialize(
            new TreadmillMech.Parts.RunningBelt { Width = UnitsNet.Length.FromInches(20) }
        );
        Assert.Equal("""{"width":"20 in","thickness":"2 mm","massPerArea":"2.4 kg/m2"}""", json);
    }

    [Theory]
    [InlineData("""{"width":"20 in","colour":"red"}""", "$.colour", "the field \"colour\"")]
    [InlineData("""{"widht":"20 in"}""", "$.widht", "the field \"widht\"")]
    [InlineData("""{"width":"50,8 cm"}""", "$.width", "with a comma")]
    [InlineData("""{"width":"NaN m"}""", "$.width", "does not begin with a number")]
    [InlineData("""{"width":"Infinity m"}""", "$.width", "does not begin with a number")]
    [InlineData("""{"width":"1e400 m"}""", "$.width", "not a finite number")]
    [InlineData("""{"width":"20 kg"}""", "$.width", "no unit for it")]
    [InlineData("""{"width":0.508}""", "$.width", "without a unit")]
    [InlineData("""{"width":null}""", "$.width", "null")]
    [InlineData("""{"width":"5 m"}""", "$.width", "\"5 m\"")]
    [InlineData("""{"width":"20 in","width":"21 in"}""", "$.width", "a second time")]
    [InlineData("{}", "$", "no field \"width\"")]
    [InlineData("[]", "$", "a list")]
    public void WhatIsNoBeltIsRefusedWithItsPlace(string json, string path, string found)
    {
        TreadmillJsonException refused = Assert.Throws<TreadmillJsonException>(() =>
            JsonSerializer.Deserialize(json, TreadmillJsonContext.Default.RunningBelt)
        );
        Assert.Contains(
            refused.Problems,
            problem => problem.Path == path && problem.Found.Contains(found, StringComparison.Ordinal)
        );
        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
    }

    /// <summary>The fields that a part should have: its properties, but for the few that a file calls otherwise.</summary>
    private static IEnumerable<string> Fields(Type type) =>
        RandomParts
            .Properties(type)
            .SelectMany(property =>
                $"{type.Name}.{property.Name}" switch
                {
                    "Treadmill.Belt" => ["runningBelt"],
                    "SpeedController.Sensor" => ["speedSensor"],

                    // The controller's fields stand beside those of motor and armature.
                    "DriveDynamics.Controller" => Fields(property.PropertyType),
                    _ => (IEnumerable<string>)[JsonNamingPolicy.CamelCase.ConvertName(property.Name)],
                }
            );
}
