namespace TreadmillMech.Json.Shapes;

/// <summary>A machine in a file of its own.</summary>
internal static class MachineFileShape
{
    internal static readonly ObjectShape<MachineFile> File = new(
        "machineFile",
        static it =>
        {
            it.Constant("format", FileFormats.Machine, MachineFile.Format);
            ShapeSlot<NamedMachine> machine = it.Need(
                "machine",
                MachineShapes.Named,
                static p => new NamedMachine(p.MachineName, p.Machine, p.Dynamics)
            );
            it.Make(values =>
                new()
                {
                    MachineName = values.Get(machine).Name,
                    Machine = values.Get(machine).Machine,
                    Dynamics = values.Get(machine).Dynamics,
                }
            );
        }
    );
}
