namespace TreadmillMech.Service;

/// <summary>Priors and default uncertainties of the joint estimate.</summary>
public sealed partial record VisitOptions
{
    /// <summary>
    /// Relative standard uncertainty of a value that the machine was described with: stiffness, tension, frictions,
    /// drag, resistance.
    /// </summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 1.</exception>
    public Threshold GivenValueSpread
    {
        get;
        init => field = Checked(value, "", 0.0001, 1);
    } = new("spread of a given value", 0.05, "", Practice);

    /// <summary>
    /// Strand tension at rest for each width taken for a belt nothing is known of, centre of a wide band.
    /// </summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 100 to 40000.</exception>
    public Threshold PriorTension
    {
        get;
        init => field = Checked(value, "N/m", 100, 40000);
    } = new("strand tension for each width", 2400, "N/m", "prior band, " + Practice);

    /// <summary>Spread of that tension, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorTensionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.6, "", "prior band, " + Practice);

    /// <summary>Deck friction of a deck as found, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.</exception>
    public Threshold PriorDeckFriction
    {
        get;
        init => field = Checked(value, "", 0.02, 1);
    } = new("deck friction as found", 0.22, "", "between waxed 0.1-0.2 and dry worn 0.3-0.4, from memory");

    /// <summary>Spread of that friction, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorDeckFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.45, "", "the same range at twice its spread");

    /// <summary>Spread of the friction expected after service, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold FrictionAfterServiceSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("spread of the deck friction after service", 0.3, "", Practice);

    /// <summary>Pull of the empty belt, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.1 to 500.</exception>
    public Threshold PriorBeltDrag
    {
        get;
        init => field = Checked(value, "N", 0.1, 500);
    } = new("pull of the empty belt", 25, "N", "prior band, " + Practice);

    /// <summary>Spread of that pull, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorBeltDragSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.6, "", "prior band, " + Practice);

    /// <summary>Change of the empty belt's pull by one service of the deck, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 100.</exception>
    public Threshold BeltDragChange
    {
        get;
        init => field = Checked(value, "", 0.001, 100);
    } = new("change of the empty belt's pull", 0.3, "", Practice);

    /// <summary>Change of the empty belt's pull by a turn of both bolts, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 100.</exception>
    public Threshold BeltDragChangeOfTurn
    {
        get;
        init => field = Checked(value, "", 0.001, 100);
    } = new("change of the empty belt's pull by a turn", 0.2, "", Practice);

    /// <summary>
    /// Relative standard uncertainty added to what motor and mains take under a user while a belt slips: nobody walks as
    /// usual on it. Half of its variance where nobody tested whether one slips.
    /// </summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold LoadWhileSlipping
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } = new("load read while a belt slips", 0.1, "", Practice);

    /// <summary>
    /// Warmth of the motor's case above the air from which its constant may have left that of the plate.
    /// </summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 20 to 150.</exception>
    public Threshold SuspectMotorWarmth
    {
        get;
        init => field = Checked(value, "K", 20, 150);
    } = new("warmth of a suspect motor", 50, "K", "between a healthy case and that of a weak motor; " + Practice);

    /// <summary>Share of its unloaded speed that a motor loses under the user, above which it is suspect as well.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 0.5.</exception>
    public Threshold SuspectMotorDroop
    {
        get;
        init => field = Checked(value, "", 0.01, 0.5);
    } = new("droop of a suspect motor", 0.04, "", Practice);

    /// <summary>Constant of a motor that shows signs of weakness over that of its plate, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.3 to 1.</exception>
    public Threshold SuspectMotorConstant
    {
        get;
        init => field = Checked(value, "", 0.3, 1);
    } =
        new(
            "constant of a suspect motor over its plate's",
            0.88,
            "",
            "as likely weak at 0.78, spread 0.1, as sound at 1: the moments of both; " + Practice
        );

    /// <summary>Spread of that constant, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold SuspectMotorConstantSpread
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } = new("its spread", 0.16, "", "the moments of both; " + Practice);

    /// <summary>Friction between running belt and a drive roller whose cloth showed lubricant, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.5.</exception>
    public Threshold OilyRollerFriction
    {
        get;
        init => field = Checked(value, "", 0.02, 1.5);
    } = new("friction of an oily roller", 0.15, "", "half of a dry one, prior band, " + Practice);

    /// <summary>Spread of that friction, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold OilyRollerFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.5, "", "prior band, " + Practice);

    /// <summary>Probability of the readings' misfit below which values from all readings together are not used.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 0.5.</exception>
    public Threshold LeastFitProbability
    {
        get;
        init => field = Checked(value, "", 0, 0.5);
    } = new("probability of the misfit", 0.01, "", "one in a hundred; " + Practice);

    /// <summary>Share by which a further reading must lower an uncertainty to be proposed.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 0.9.</exception>
    public Threshold WorthReading
    {
        get;
        init => field = Checked(value, "", 0, 0.9);
    } = new("gain that is worth a reading", 0.1, "", Practice);

    /// <summary>Relative uncertainty of margin and deck friction below which no further reading is proposed for it.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold FineEnough
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } = new("uncertainty that is fine enough", 0.05, "", Practice);

    /// <summary>Relative uncertainty of a margin up to which a finding rests on it.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 1.</exception>
    public Threshold SureMargin
    {
        get;
        init => field = Checked(value, "", 0.01, 1);
    } = new("uncertainty of a margin that tells", 0.25, "", Practice);

    /// <summary>Friction between running belt and drive roller as found, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.5.</exception>
    public Threshold PriorRollerFriction
    {
        get;
        init => field = Checked(value, "", 0.02, 1.5);
    } = new("roller friction as found", 0.3, "", "prior band, " + Practice);

    /// <summary>Spread of that friction, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorRollerFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.4, "", "prior band, " + Practice);

    /// <summary>Friction between running belt and a roller that was cleaned, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.5.</exception>
    public Threshold CleanRollerFriction
    {
        get;
        init => field = Checked(value, "", 0.02, 1.5);
    } = new("roller friction after cleaning", 0.35, "", "prior band, " + Practice);

    /// <summary>Spread of that friction, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold CleanRollerFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.3, "", "prior band, " + Practice);

    /// <summary>Strand tension of a drive belt as found, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 5 to 3000.</exception>
    public Threshold PriorDriveBeltTension
    {
        get;
        init => field = Checked(value, "N", 5, 3000);
    } = new("drive-belt tension as found", 200, "N", "prior band, " + Practice);

    /// <summary>Spread of that tension, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorDriveBeltTensionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.6, "", "prior band, " + Practice);

    /// <summary>Strand tension of a drive belt that was tensioned or replaced, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 5 to 3000.</exception>
    public Threshold ServicedDriveBeltTension
    {
        get;
        init => field = Checked(value, "N", 5, 3000);
    } = new("drive-belt tension after service", 250, "N", "prior band, " + Practice);

    /// <summary>Spread of that tension, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold ServicedDriveBeltTensionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.4, "", "prior band, " + Practice);

    /// <summary>Friction between drive belt and pulley on the face of a rib, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.05 to 1.5.</exception>
    public Threshold PriorDriveBeltFriction
    {
        get;
        init => field = Checked(value, "", 0.05, 1.5);
    } = new("friction of the drive belt", 0.35, "", "prior band, " + Practice);

    /// <summary>Spread of that friction, of its logarithm: a glazed or oily rib has half of it, a new one may have twice.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorDriveBeltFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.45, "", "prior band, " + Practice);

    /// <summary>Friction of a drive belt that looks glazed, on the face of a rib, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.05 to 1.5.</exception>
    public Threshold GlazedDriveBeltFriction
    {
        get;
        init => field = Checked(value, "", 0.05, 1.5);
    } = new("friction of a glazed drive belt", 0.17, "", "half of a sound one, prior band, " + Practice);

    /// <summary>Spread of that friction, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold GlazedDriveBeltFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.45, "", "prior band, " + Practice);

    /// <summary>Torque lost inside the motor, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 5.</exception>
    public Threshold PriorMotorFriction
    {
        get;
        init => field = Checked(value, "N m", 0.0001, 5);
    } = new("torque lost in the motor", 0.1, "N m", "prior band, " + Practice);

    /// <summary>Spread of that torque, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorMotorFrictionSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.7, "", "prior band, " + Practice);

    /// <summary>Motor constant where no plate tells, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 5.</exception>
    public Threshold PriorMotorConstant
    {
        get;
        init => field = Checked(value, "V s/rad", 0.02, 5);
    } = new("motor constant", 0.3, "V s/rad", "prior band, " + Practice);

    /// <summary>Spread of that constant, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorMotorConstantSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.6, "", "prior band, " + Practice);

    /// <summary>Resistance of the armature where not measured, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 50.</exception>
    public Threshold PriorArmatureResistance
    {
        get;
        init => field = Checked(value, "ohm", 0.01, 50);
    } = new("resistance of the armature", 1, "ohm", "prior band, " + Practice);

    /// <summary>Spread of that resistance, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorArmatureResistanceSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("its spread", 0.7, "", "prior band, " + Practice);

    /// <summary>Standard uncertainty of the voltage lost at both brushes.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 1000.</exception>
    public Threshold BrushDropSpread
    {
        get;
        init => field = Checked(value, "V", 0.0001, 1000);
    } = new("spread of the brushes' drop", 0.5, "V", Practice);

    /// <summary>Efficiency from mains to motor terminals, all losses not modelled included, centre of a band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.3 to 1.</exception>
    public Threshold PriorControllerEfficiency
    {
        get;
        init => field = Checked(value, "", 0.3, 1);
    } = new("efficiency from mains to motor", 0.85, "", "prior band, " + Practice);

    /// <summary>Spread of that efficiency, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 100.</exception>
    public Threshold PriorControllerEfficiencySpread
    {
        get;
        init => field = Checked(value, "", 0.0001, 100);
    } = new("its spread", 0.1, "", "prior band, " + Practice);

    /// <summary>Spread of the mains power at rest, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 100.</exception>
    public Threshold StandbyPowerSpread
    {
        get;
        init => field = Checked(value, "", 0.0001, 100);
    } = new("spread of the power at rest", 0.5, "", Practice);

    /// <summary>Relative standard uncertainty of a voltage.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-05 to 0.2.</exception>
    public Threshold MeterVoltage
    {
        get;
        init => field = Checked(value, "", 1e-05, 0.2);
    } = new("voltage", 0.005, "", Practice);

    /// <summary>Relative standard uncertainty of a plucked span's pitch, its length and bending included.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.5.</exception>
    public Threshold SpanPitch
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.5);
    } = new("pitch of a span", 0.02, "", Practice);

    /// <summary>Least standard uncertainty of a force, half a division of a scale.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-06 to 50.</exception>
    public Threshold LeastForceUncertainty
    {
        get;
        init => field = Checked(value, "N", 1e-06, 50);
    } = new("half a division of the scale", 0.2, "N", Practice);

    /// <summary>Least standard uncertainty of a motor current.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-06 to 5.</exception>
    public Threshold LeastCurrentUncertainty
    {
        get;
        init => field = Checked(value, "A", 1e-06, 5);
    } = new("half a division of the clamp", 0.05, "A", Practice);

    /// <summary>Least standard uncertainty of mains power.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-06 to 100.</exception>
    public Threshold LeastPowerUncertainty
    {
        get;
        init => field = Checked(value, "W", 1e-06, 100);
    } = new("half a division of the power meter", 1, "W", Practice);

    /// <summary>Standard deviation, of the logarithm, of the margin about 1 at which people find that a belt slips.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold SlipMargin
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } = new("margin at which slip is felt", 0.1, "", Practice);

    /// <summary>Share of its prior's spread up to which an estimate counts as told by the readings.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 0.999.</exception>
    public Threshold ObservedShare
    {
        get;
        init => field = Checked(value, "", 0.01, 0.999);
    } = new("share of the prior's spread", 0.5, "", "the limit that lift tests go by; " + Practice);

    /// <summary>
    /// Distance of a reading from what all others foretell, in standard deviations, above which it contradicts them.
    /// </summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 20.</exception>
    public Threshold MisfitOfContradiction
    {
        get;
        init => field = Checked(value, "", 1, 20);
    } = new("misfit of a contradiction", 3, "", "three standard deviations; " + Practice);
}
