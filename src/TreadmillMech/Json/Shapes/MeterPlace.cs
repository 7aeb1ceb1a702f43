namespace TreadmillMech.Json.Shapes;

/// <summary>Which lead a current was read in.</summary>
internal enum MeterPlace
{
    MotorLead = 0,
    MainsLead,
}
