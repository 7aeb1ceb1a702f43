using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Tests.Json;

/// <summary>Every member of every kind has a word of its own, and comes back from it.</summary>
public sealed class WordTests
{
    public static TheoryData<string> Kinds => [.. Enums().Select(static type => type.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryMemberComesBackFromItsWord(string name)
    {
        Type type = Enums().Single(type => type.Name == name);
        HashSet<string> words = [];
        foreach (object member in Enum.GetValues(type))
        {
            // Two members stand for the absence of what the word would name.
            if (member is Reason.Found or Tensioning.DirectDrive)
            {
                continue;
            }

            string json = JsonSerializer.Serialize(member, type, TreadmillJson.Options);
            Assert.Matches("^\"[A-Za-z -]+\"$", json);
            Assert.True(words.Add(json), json);
            Assert.Equal(member, JsonSerializer.Deserialize(json, type, TreadmillJson.Options));
        }

        Assert.NotEmpty(words);
    }

    private static IEnumerable<Type> Enums() => JsonForms.Types.Where(static type => type.IsEnum);
}
