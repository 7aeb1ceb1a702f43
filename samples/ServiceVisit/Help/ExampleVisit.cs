namespace TreadmillMech.Samples.ServiceVisit.Help;

/// <summary>A complete visit that shows each kind of event once; a test reads it as a user would copy it.</summary>
internal static class ExampleVisit
{
    internal const string Json = """
        {
          "format": "treadmillmech-visit/1",
          "machine": {
            "name": "Example 1 (invented)",
            "runningBelt": { "width": "20 in", "thickness": "2 mm", "massPerArea": "2.4 kg/m2" },
            "driveRoller": { "diameter": "2.4 in" },
            "tailRoller": { "diameter": "50 mm" },
            "centreDistance": "57 in",
            "driveEnd": "front",
            "takeUp": { "thread": "M8x1.25", "bolts": 2, "boltSpacing": "560 mm", "threadLeft": "30 mm" },
            "deck": { "footZoneLength": "1 m", "footZoneWidth": "400 mm", "preWaxed": false },
            "driveBelt": {
              "tensioning": "sliding motor",
              "motorPulleyDiameter": "28 mm",
              "rollerPulleyDiameter": "84 mm",
              "centreDistance": "190 mm"
            },
            "motor": { "constant": "31.4 V/krpm", "resistance": "0.8 ohm", "canBrake": false },
            "supply": { "voltage": "120 V", "controllerEfficiency": "92 %", "circuitRating": "20 A" },
            "plate": { "largestUserMass": "136 kg", "highestSpeed": "10 mph", "lubricantDose": "15 mL" }
          },
          "testDemand": { "person": { "mass": "95 kg" }, "speed": "6 mph", "grade": "0 %" },
          "day": "2026-03-14",
          "earlier": [
            { "day": "2025-02-20", "deckFriction": 0.17, "frictionUncertainty": 0.01, "serviced": true },
            {
              "day": "2025-09-02",
              "deckFriction": 0.2,
              "restTension": "900 N",
              "turns": "0.5 turn",
              "beltDrag": "32 N"
            }
          ],
          "earlierTurns": "0.5 turn",
          "usage": { "eachDay": "2.5 h", "meanMass": "75 kg", "meanSpeed": "7 km/h" },
          "events": [
            { "reading": "wipe", "place": "drive roller", "trace": "dry" },
            { "reading": "driveBelt", "look": "sound" },
            { "reading": "spanFrequency", "frequency": "88 Hz", "span": "188 mm" },
            { "reading": "symptom", "symptom": "rumble", "present": false },
            { "reading": "bolts", "feel": "even" },
            { "reading": "thread", "left": "30 mm" },
            { "reading": "marks", "distance": "1003 mm", "asFitted": "1 m" },
            { "reading": "groove", "depth": "0.3 mm" },
            { "reading": "brush", "left": "16 mm", "least": "8 mm" },
            { "reading": "level", "across": "0.2 %" },
            { "reading": "incline", "measured": "4.8 %", "display": "5 %" },
            { "reading": "mainsVoltage", "state": "unloaded", "voltage": "121 V" },
            { "reading": "lift", "height": "25 mm", "force": "75 N" },
            { "reading": "pull", "mass": "80 kg", "loadedPull": "60 lbf", "emptyPull": "9 lbf" },
            { "reading": "lockedPull", "pull": "95 lbf", "slid": "running belt" },
            {
              "reading": "speeds",
              "state": "unloaded",
              "motor": "2479 rpm",
              "driveRoller": "826 1/min",
              "belt": "6 mph",
              "display": "6 mph"
            },
            {
              "reading": "current",
              "where": "motor lead",
              "form": "direct",
              "response": "true RMS",
              "zeroed": true,
              "state": "unloaded",
              "current": "1.5 A",
              "beltSpeed": "6 mph",
              "voltage": "81 V",
              "motorSpeed": "2479 rpm"
            },
            {
              "reading": "current",
              "where": "mains lead",
              "form": "alternating",
              "response": "true RMS",
              "state": "loaded",
              "current": "11.5 A",
              "beltSpeed": "6 mph",
              "uncertainty": "3 %"
            },
            {
              "reading": "passes",
              "state": "unloaded",
              "passes": 30,
              "time": "34.4 s",
              "display": "6 mph"
            },
            { "reading": "temperature", "place": "motor case", "temperature": "48 °C", "air": "21 °C" },
            { "reading": "coastDown", "from": "6 mph", "time": "3.1 s" },
            { "reading": "mainsPower", "state": "unloaded", "power": "140 W", "beltSpeed": "6 mph" },
            { "action": "clean", "place": "deck" },
            { "action": "lubricate", "volume": "15 mL" },
            { "action": "takeUp", "left": "0.25 turn", "right": "0.25 turn", "by": "technician" },
            { "action": "driveBelt", "work": "tensioned" },
            { "reading": "slipTest", "slipped": false },
            { "reading": "tracking", "driftToRight": "-2 mm", "passes": 50, "state": "unloaded" }
          ]
        }
        """;
}
