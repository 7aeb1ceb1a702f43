using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>Parts that a visit file does not hold, in the same form.</summary>
internal static class FurtherPartShapes
{
    internal static readonly ObjectShape<Bearing> Bearing = new(
        "bearing",
        static it =>
        {
            it.Set("balls", JsonKinds.Boolean, static p => p.Balls, static (p, v) => p with { Balls = v });
            it.May(
                "dynamicRating",
                JsonKinds.Force,
                static p => p.DynamicRating,
                static (p, v) => p with { DynamicRating = v }
            );
            it.Make(static _ => new());
        }
    );

    internal static readonly ObjectShape<BoltRod> BoltRod = new(
        "boltRod",
        static it =>
        {
            ShapeSlot<Length> freeLength = it.Need("freeLength", JsonKinds.Length, static p => p.FreeLength);
            ShapeSlot<Pressure> elasticModulus = it.Need(
                "elasticModulus",
                JsonKinds.Pressure,
                static p => p.ElasticModulus
            );
            it.Make(values =>
                new() { FreeLength = values.Get(freeLength), ElasticModulus = values.Get(elasticModulus) }
            );
        }
    );

    internal static readonly ObjectShape<Collar> Collar = new(
        "collar",
        static it =>
        {
            ShapeSlot<Length> meanDiameter = it.Need("meanDiameter", JsonKinds.Length, static p => p.MeanDiameter);
            ShapeSlot<double> friction = it.Need("friction", JsonKinds.PlainNumber, static p => p.Friction);
            it.Make(values => new() { MeanDiameter = values.Get(meanDiameter), Friction = values.Get(friction) });
        }
    );

    internal static readonly ObjectShape<DeckBoard> DeckBoard = new(
        "deckBoard",
        static it =>
        {
            ShapeSlot<Length> thickness = it.Need("thickness", JsonKinds.Length, static p => p.Thickness);
            ShapeSlot<Length> width = it.Need("width", JsonKinds.Length, static p => p.Width);
            ShapeSlot<Length> supportSpan = it.Need("supportSpan", JsonKinds.Length, static p => p.SupportSpan);
            it.May(
                "elasticModulus",
                JsonKinds.Pressure,
                static p => p.ElasticModulus,
                static (p, v) => p with { ElasticModulus = v }
            );
            it.May(
                "cushionStiffness",
                JsonKinds.ForcePerLength,
                static p => p.CushionStiffness,
                static (p, v) => p with { CushionStiffness = v }
            );
            it.Make(values =>
                new()
                {
                    Thickness = values.Get(thickness),
                    Width = values.Get(width),
                    SupportSpan = values.Get(supportSpan),
                }
            );
        }
    );

    internal static readonly ObjectShape<RollerTube> RollerTube = new(
        "rollerTube",
        static it =>
        {
            ShapeSlot<Length> outerDiameter = it.Need("outerDiameter", JsonKinds.Length, static p => p.OuterDiameter);
            ShapeSlot<Length> innerDiameter = it.Need("innerDiameter", JsonKinds.Length, static p => p.InnerDiameter);
            ShapeSlot<Length> bearingSpan = it.Need("bearingSpan", JsonKinds.Length, static p => p.BearingSpan);
            it.Set(
                "material",
                WordTables.TubeMaterials,
                static p => p.Material,
                static (p, v) => p with { Material = v }
            );
            it.May(
                "elasticModulus",
                JsonKinds.Pressure,
                static p => p.ElasticModulus,
                static (p, v) => p with { ElasticModulus = v }
            );
            it.Make(values =>
                new()
                {
                    OuterDiameter = values.Get(outerDiameter),
                    InnerDiameter = values.Get(innerDiameter),
                    BearingSpan = values.Get(bearingSpan),
                }
            );
        }
    );

    internal static readonly ObjectShape<StaticFriction> StaticFriction = new(
        "staticFriction",
        static it =>
        {
            ShapeSlot<double> atRest = it.Need("atRest", JsonKinds.PlainNumber, static p => p.AtRest);
            it.May(
                "stribeckSpeed",
                JsonKinds.Speed,
                static p => p.StribeckSpeed,
                static (p, v) => p with { StribeckSpeed = v }
            );
            it.Make(values => new() { AtRest = values.Get(atRest) });
        }
    );

    internal static readonly ObjectShape<WearPair> WearPair = new(
        "wearPair",
        static it =>
        {
            ShapeSlot<double> coefficient = it.Need("coefficient", JsonKinds.PlainNumber, static p => p.Coefficient);
            ShapeSlot<Pressure> hardness = it.Need("hardness", JsonKinds.Pressure, static p => p.Hardness);
            it.Make(values => new() { Coefficient = values.Get(coefficient), Hardness = values.Get(hardness) });
        }
    );

    internal static readonly ObjectShape<Magnets> Magnets = new(
        "magnets",
        static it =>
        {
            ShapeSlot<Ratio> lossPerKelvin = it.Need("lossPerKelvin", JsonKinds.Share, static p => p.LossPerKelvin);
            ShapeSlot<Temperature> constantTemperature = it.Need(
                "constantTemperature",
                JsonKinds.Celsius,
                static p => p.ConstantTemperature
            );
            ShapeSlot<Temperature> temperature = it.Need("temperature", JsonKinds.Celsius, static p => p.Temperature);
            it.Make(values =>
                new()
                {
                    LossPerKelvin = values.Get(lossPerKelvin),
                    ConstantTemperature = values.Get(constantTemperature),
                    Temperature = values.Get(temperature),
                }
            );
        }
    );

    internal static readonly ObjectShape<InductionMotor> InductionMotor = new(
        "inductionMotor",
        static it =>
        {
            ShapeSlot<Frequency> ratedFrequency = it.Need(
                "ratedFrequency",
                JsonKinds.Frequency,
                static p => p.RatedFrequency
            );
            ShapeSlot<int> polePairs = it.Need("polePairs", JsonKinds.Count, static p => p.PolePairs);
            ShapeSlot<ElectricResistance> statorResistance = it.Need(
                "statorResistance",
                JsonKinds.Resistance,
                static p => p.StatorResistance
            );
            ShapeSlot<ElectricResistance> statorReactance = it.Need(
                "statorReactance",
                JsonKinds.Resistance,
                static p => p.StatorReactance
            );
            ShapeSlot<ElectricResistance> rotorResistance = it.Need(
                "rotorResistance",
                JsonKinds.Resistance,
                static p => p.RotorResistance
            );
            ShapeSlot<ElectricResistance> rotorReactance = it.Need(
                "rotorReactance",
                JsonKinds.Resistance,
                static p => p.RotorReactance
            );
            ShapeSlot<ElectricResistance> magnetisingReactance = it.Need(
                "magnetisingReactance",
                JsonKinds.Resistance,
                static p => p.MagnetisingReactance
            );
            it.Set(
                "rotationalLoss",
                JsonKinds.Power,
                static p => p.RotationalLoss,
                static (p, v) => p with { RotationalLoss = v }
            );
            it.Make(values =>
                new()
                {
                    RatedFrequency = values.Get(ratedFrequency),
                    PolePairs = values.Get(polePairs),
                    StatorResistance = values.Get(statorResistance),
                    StatorReactance = values.Get(statorReactance),
                    RotorResistance = values.Get(rotorResistance),
                    RotorReactance = values.Get(rotorReactance),
                    MagnetisingReactance = values.Get(magnetisingReactance),
                }
            );
        }
    );
}
