using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Json;

/// <summary>Metadata of quantities and kinds, which cannot carry an attribute.</summary>
internal sealed class ValueResolver : IJsonTypeInfoResolver
{
    internal static readonly ValueResolver Instance = new();

    private static readonly Dictionary<
        Type,
        (JsonConverter Converter, Func<JsonSerializerOptions, JsonTypeInfo> Make)
    > ByType = new List<(Type Type, JsonConverter Converter, Func<JsonSerializerOptions, JsonTypeInfo> Make)>
    {
        Of<DriveEnd>(),
        Of<Gait>(),
        Of<Tensioning>(),
        Of<SlidContact>(),
        Of<LoadState>(),
        Of<CurrentForm>(),
        Of<MeterResponse>(),
        Of<WipedPlace>(),
        Of<WipedTrace>(),
        Of<DriveBeltLook>(),
        Of<CleanedPlace>(),
        Of<BoltFeel>(),
        Of<TurnedBy>(),
        Of<WarmPlace>(),
        Of<Symptom>(),
        Of<RibSection>(),
        Of<TubeMaterial>(),
        Of<SpeedSensor>(),
        Of<ReadingKind>(),
        Of<TurnLimit>(),
        Of<Verdict>(),
        Of<Subject>(),
        Of<Severity>(),
        Of<Cause>(),
        Of<Reason>(),
        Of<WeakContact>(),
        Of<Length>(),
        Of<Mass>(),
        Of<Force>(),
        Of<Torque>(),
        Of<Speed>(),
        Of<RotationalSpeed>(),
        Of<Frequency>(),
        Of<Angle>(),
        Of<Ratio>(),
        Of<Volume>(),
        Of<Power>(),
        Of<ElectricPotential>(),
        Of<ElectricCurrent>(),
        Of<ElectricResistance>(),
        Of<Temperature>(),
        Of<ForcePerLength>(),
        Of<AreaDensity>(),
        Of<LinearDensity>(),
        Of<MassMomentOfInertia>(),
        Of<MotorConstant>(),
        Of<Duration>(),
        Of<Acceleration>(),
        Of<Energy>(),
        Of<Pressure>(),
        Of<ElectricInductance>(),
        Of<HeatCapacity>(),
        Of<ThermalConductance>(),
        Of<Area>(),
        Of<TemperatureDelta>(),
        Of<Compliance>(),
        Of<BendingStiffness>(),
        Of<Estimate<double>>(),
        Of<Estimate<Force>>(),
        Of<Estimate<ForcePerLength>>(),
        Of<Estimate<MotorConstant>>(),
    }.ToDictionary(static row => row.Type, static row => (row.Converter, row.Make));

    internal static IEnumerable<JsonConverter> Converters => ByType.Values.Select(static row => row.Converter);

    /// <inheritdoc/>
    public JsonTypeInfo? GetTypeInfo(Type type, JsonSerializerOptions options) =>
        ByType.TryGetValue(type, out var row) ? row.Make(options) : null;

    private static (Type Type, JsonConverter Converter, Func<JsonSerializerOptions, JsonTypeInfo> Make) Of<T>()
        where T : notnull
    {
        TreadmillJsonConverter<T> converter = new();
        return (typeof(T), converter, options => JsonMetadataServices.CreateValueInfo<T>(options, converter));
    }
}
