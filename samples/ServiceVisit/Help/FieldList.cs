using TreadmillMech.Samples.ServiceVisit.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Help;

/// <summary>The fields, in words. An asterisk marks those that must be there.</summary>
internal static class FieldList
{
    internal static readonly IReadOnlyList<(string Object, string Fields)> All =
    [
        ("the file", "format*, machine*, testDemand*, events*, day, earlier (the oldest first), earlierTurns, usage"),
        (
            "machine",
            "name*, runningBelt*, driveRoller*, tailRoller*, centreDistance*, takeUp*, deck*, driveEnd, restTension, "
                + "beltDrag, driveBelt, motor, supply, plate, dynamics"
        ),
        ("runningBelt", "width*, thickness, massPerArea, relaxedForcePerWidth (at 1 % elongation)"),
        ("driveRoller, tailRoller", "diameter*, friction, inertia, hubStiffness"),
        (
            "takeUp",
            "thread* or lead* (travel in one turn, measured), adjustedEnd, bolts (1 or 2), clockwiseTightens, "
                + "boltSpacing, boltAngle, threadLeft, leftTurns, rightTurns"
        ),
        ("deck", "friction, footZoneLength, footZoneWidth, preWaxed"),
        (
            "driveBelt",
            "tensioning*, motorPulleyDiameter*, rollerPulleyDiameter*, centreDistance*, tension, friction, grooveAngle, "
                + "massPerLength"
        ),
        (
            "motor",
            "constant, resistance, resistanceTemperature, windingTemperature, brushDrop, frictionTorque, voltageLimit, "
                + "currentLimit, canBrake"
        ),
        (
            "dynamics",
            "motorInertia* (with pulley and flywheel), armatureInductance*, speedSensor*, gain* (current at an error of 1 m/s), "
                + "integralTime*, beltLossFactor"
        ),
        ("supply", "voltage*, controllerEfficiency, powerFactor, standbyPower, circuitRating"),
        ("plate", "largestUserMass, highestSpeed, lubricantDose"),
        (
            "testDemand",
            "person* (mass*, cadence), speed*, grade, strikePosition, gait, rails (weightShare, forwardForce), "
                + "brakingStep (peak in body weights)"
        ),
        (
            "earlier (a list)",
            "day*, deckFriction, frictionUncertainty (as left), serviced (deck cleaned or lubricated), restTension, "
                + "turns, beltDrag (pull of the empty belt)"
        ),
        ("usage", "eachDay* (running time, averaged over all days), meanMass*, meanSpeed*"),
        ("reading wipe", "place*, trace*"),
        ("reading driveBelt", "look*"),
        ("reading lift", "height*, force*, rollersLocked"),
        ("reading pull", "mass*, loadedPull*, emptyPull*, motorUncoupled (drive belt off while pulling)"),
        ("reading lockedPull", "pull*, slid* (motor held, belt pulled towards the console at the middle of the deck)"),
        ("reading speeds", "state*, motor, driveRoller, belt, display"),
        (
            "reading current",
            "where*, form*, response*, zeroed* (motor lead), state*, current*, beltSpeed*; at the motor lead also "
                + "voltage, motorSpeed, userMass"
        ),
        ("reading mainsPower", "state*, power*, beltSpeed*, userMass"),
        ("reading slipTest", "slipped*"),
        ("reading tracking", "driftToRight* (negative to the left), passes*, state"),
        ("reading passes", "state*, passes*, time*, display (passes of a mark on the belt, counted)"),
        ("reading marks", "distance*, asFitted* (two marks along the running belt)"),
        ("reading bolts", "feel*"),
        ("reading thread", "left* (on the shorter side, for tightening)"),
        ("reading groove", "depth* (under a straightedge on the deck)"),
        ("reading spanFrequency", "frequency*, span (pitch of the drive belt's plucked span)"),
        ("reading coastDown", "from*, time* (empty belt, from pulling the safety key to rest)"),
        ("reading temperature", "place*, temperature*, air* (after half an hour or more)"),
        ("reading brush", "left* (shortest brush), least (by the maker)"),
        ("reading mainsVoltage", "state*, voltage*"),
        ("reading incline", "measured*, display*"),
        ("reading level", "across* (positive where the right side is high)"),
        ("reading symptom", "symptom*, present* (false: looked for, and not there)"),
        ("every reading", "uncertainty (relative standard uncertainty)"),
        ("action takeUp", "left*, right* (positive tightens; with one bolt give its turns as both), by"),
        ("action clean", "place*"),
        ("action lubricate", "volume*"),
        ("action driveBelt", "work*"),
        ("words: driveEnd, adjustedEnd", WordTables.Ends.Words),
        (
            "words: tensioning",
            $"{WordTables.Tensionings.Words}; leave driveBelt out where the motor sits on the roller"
        ),
        ("words: gait", WordTables.Gaits.Words),
        ("words: state", WordTables.States.Words),
        ("words: slid", WordTables.Slid.Words),
        ("words: where", WordTables.MeterPlaces.Words),
        (
            "words: form",
            $"{WordTables.Forms.Words}; the motor lead carries direct, the mains lead alternating current; the other form is refused with the file"
        ),
        (
            "words: response",
            $"{WordTables.Responses.Words}; an averaging reading of the mains is not used, and the sheet says so"
        ),
        ("words: place of a wipe", WordTables.WipedPlaces.Words),
        ("words: trace", WordTables.Traces.Words),
        ("words: look", WordTables.Looks.Words),
        ("words: place of a clean", WordTables.CleanedPlaces.Words),
        ("words: feel", WordTables.BoltFeels.Words),
        ("words: place of temperature", WordTables.WarmPlaces.Words),
        ("words: symptom", WordTables.Symptoms.Words),
        ("words: by", WordTables.Hands.Words),
        ("words: work", WordTables.DriveBeltWork.Words),
    ];
}
