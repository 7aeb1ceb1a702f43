using TreadmillMech.Samples.ServiceVisit.Help;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Further readings, days and earlier visits that are refused, at their place.</summary>
public sealed class BadFurtherFieldTests
{
    // What is changed in the example of the help, into what, the path that is told, what is found, what is expected.
    public static readonly TheoryData<string, string, string, string, string> OneMistake = new()
    {
        { "\"day\": \"2026-03-14\"", "\"day\": \"14.03.2026\"", "$.day", "\"14.03.2026\"", "2026-03-14" },
        { "\"day\": \"2026-03-14\"", "\"day\": \"03/14/2026\"", "$.day", "\"03/14/2026\"", "year, month and day" },
        { "\"day\": \"2026-03-14\"", "\"day\": \"2026-3-14\"", "$.day", "\"2026-3-14\"", "2026-03-14" },
        { "\"day\": \"2026-03-14\"", "\"day\": \"2026-02-30\"", "$.day", "\"2026-02-30\"", "2026-03-14" },
        { "\"day\": \"2026-03-14\"", "\"day\": \" 2026-03-14\"", "$.day", "\" 2026-03-14\"", "2026-03-14" },
        { "\"day\": \"2026-03-14\"", "\"day\": \"2026-03-14T10:00\"", "$.day", "T10:00", "2026-03-14" },
        { "\"day\": \"2026-03-14\"", "\"day\": \"0226-03-14\"", "$.day", "\"0226-03-14\"", "from 1950-01-01" },
        { "\"day\": \"2026-03-14\"", "\"day\": 20260314", "$.day", "20260314", "a day as text" },
        { "\"day\": \"2026-03-14\"", "\"day\": null", "$.day", "null", "leave out what is not known" },
        {
            "\"day\": \"2025-09-02\"",
            "\"day\": \"2025-01-02\"",
            "$.earlier[1].day",
            "before 2025-02-20",
            "the oldest first"
        },
        { "\"day\": \"2025-09-02\"", "\"day\": \"2026-09-02\"", "$.earlier[1].day", "\"2026-09-02\"", "2026-03-14" },
        { "\"day\": \"2025-02-20\", ", "", "$.earlier[0]", "no field \"day\"", "a day as text" },
        {
            "\"deckFriction\": 0.17",
            "\"deckFriction\": \"0,17\"",
            "$.earlier[0].deckFriction",
            "a comma",
            "a decimal point"
        },
        { "\"deckFriction\": 0.17", "\"deckFriction\": 1.7", "$.earlier[0].deckFriction", "1.7", "0.02 to 1" },
        {
            "\"deckFriction\": 0.17",
            "\"deckFriktion\": 0.17",
            "$.earlier[0].deckFriktion",
            "not known here",
            "\"deckFriction\""
        },
        {
            "\"frictionUncertainty\": 0.01",
            "\"frictionUncertainty\": 0",
            "$.earlier[0].frictionUncertainty",
            "0",
            "0.001 to 0.5"
        },
        { "\"serviced\": true", "\"serviced\": \"yes\"", "$.earlier[0].serviced", "\"yes\"", "true or false" },
        {
            "\"restTension\": \"900 N\"",
            "\"restTension\": \"900\"",
            "$.earlier[1].restTension",
            "without a unit",
            "N, kN"
        },
        { "\"turns\": \"0.5 turn\"", "\"turns\": \"50 turns\"", "$.earlier[1].turns", "\"50 turns\"", "-20 to 20" },
        { "\"beltDrag\": \"32 N\"", "\"beltDrag\": \"3200 N\"", "$.earlier[1].beltDrag", "\"3200 N\"", "0 N to 500 N" },
        { "\"earlier\": [", "\"earlier\": 3, \"x\": [", "$.earlier", "3", "a list of earlier visits" },
        { "\"earlier\": [", "\"earlier\": [ 7,", "$.earlier[0]", "7", "an object with fields" },
        { "\"eachDay\": \"2.5 h\"", "\"eachDay\": \"2.5\"", "$.usage.eachDay", "without a unit", "s, min or h" },
        { "\"eachDay\": \"2.5 h\"", "\"eachDay\": \"25 h\"", "$.usage.eachDay", "\"25 h\"", "86400 s" },
        { "\"eachDay\": \"2.5 h\", ", "", "$.usage", "no field \"eachDay\"", "a time" },
        { "\"meanMass\": \"75 kg\"", "\"meanMass\": \"750 kg\"", "$.usage.meanMass", "\"750 kg\"", "10 kg to 350 kg" },
        { "\"meanSpeed\": \"7 km/h\"", "\"meanSpeed\": \"7 kmh\"", "$.usage.meanSpeed", "\"kmh\" is no unit", "km/h" },
        { "\"frequency\": \"88 Hz\"", "\"frequency\": \"NaN Hz\"", Event(2, "frequency"), "\"NaN Hz\"", "a frequency" },
        {
            "\"frequency\": \"88 Hz\"",
            "\"frequency\": \"8800 Hz\"",
            Event(2, "frequency"),
            "\"8800 Hz\"",
            "5 Hz to 1000 Hz"
        },
        { "\"span\": \"188 mm\"", "\"span\": \"1.88 m\"", Event(2, "span"), "\"1.88 m\"", "0.03 m to 0.6 m" },
        { "\"symptom\": \"rumble\"", "\"symptom\": \"rumbel\"", Event(3, "symptom"), "\"rumbel\"", "\"rumble\"" },
        { "\"present\": false", "\"present\": 0", Event(3, "present"), "0", "true or false" },
        { ", \"present\": false", "", "$.events[3]", "no field \"present\"", "true or false" },
        { "\"feel\": \"even\"", "\"feel\": \"soft\"", Event(4, "feel"), "\"soft\"", "\"even\", \"hard\", \"loose\"" },
        { "\"left\": \"30 mm\"", "\"left\": \"300 mm\"", Event(5, "left"), "\"300 mm\"", "0 m to 0.2 m" },
        { "\"asFitted\": \"1 m\"", "\"asFitted\": \"1 mm\"", Event(6, "asFitted"), "\"1 mm\"", "0.1 m to 10 m" },
        { "\"depth\": \"0.3 mm\"", "\"depth\": \"30 mm\"", Event(7, "depth"), "\"30 mm\"", "0 m to 0.02 m" },
        { "\"least\": \"8 mm\"", "\"least\": \"0.1 mm\"", Event(8, "least"), "\"0.1 mm\"", "0.001 m to 0.06 m" },
        { "\"across\": \"0.2 %\"", "\"across\": \"20 %\"", Event(9, "across"), "\"20 %\"", "-0.1 to 0.1" },
        { "\"measured\": \"4.8 %\"", "\"measured\": 0.048", Event(10, "measured"), "without a unit", "%" },
        { "\"voltage\": \"121 V\"", "\"voltage\": \"12.1 V\"", Event(11, "voltage"), "\"12.1 V\"", "50 V to 500 V" },
        { "\"time\": \"34.4 s\"", "\"time\": \"0:34\"", Event(18, "time"), "is no unit", "s, min or h" },
        { "\"time\": \"34.4 s\"", "\"time\": \"34.4 h\"", Event(18, "time"), "\"34.4 h\"", "1 s to 3600 s" },
        { "\"passes\": 30", "\"passes\": 30.5", Event(18, "passes"), "30.5", "a whole count" },
        { "\"place\": \"motor case\"", "\"place\": \"motor\"", Event(19, "place"), "\"motor\"", "\"motor case\"" },
        { ", \"air\": \"21 °C\"", "", "$.events[19]", "no field \"air\"", "a temperature" },
        { "\"time\": \"3.1 s\"", "\"time\": \"3.1 min\"", Event(20, "time"), "\"3.1 min\"", "0.1 s to 120 s" },
        { "\"by\": \"technician\"", "\"by\": \"owner\"", Event(24, "by"), "\"owner\"", "\"somebody before\"" },
        {
            "\"passes\": 50, \"state\": \"unloaded\"",
            "\"passes\": 50, \"state\": \"empty\"",
            Event(27, "state"),
            "\"empty\"",
            "\"unloaded\", \"loaded\""
        },
    };

    [Theory]
    [MemberData(nameof(OneMistake))]
    public void OneMistakeIsToldWithItsPlace(string from, string to, string path, string found, string expected)
    {
        (string text, int line) = Sample.Change(ExampleVisit.Json, from, to);
        Sample.Outcome outcome = Sample.RunOn(text);
        Assert.Equal(2, outcome.Code);
        Assert.Empty(outcome.Output);
        string told = Assert.Single(
            outcome.Errors.Split('\n'),
            complaint => complaint.Contains($", {path}: found ", StringComparison.Ordinal)
        );
        int at = told.IndexOf("; expected", StringComparison.Ordinal);
        Assert.Contains($", line {line}, ", told, StringComparison.Ordinal);
        Assert.Contains(found, told[..at], StringComparison.Ordinal);
        Assert.Contains(expected, told[at..], StringComparison.Ordinal);
        Assert.EndsWith("Nothing written.\n", outcome.Errors, StringComparison.Ordinal);
    }

    private static string Event(int index, string field) => $"$.events[{index}].{field}";
}
