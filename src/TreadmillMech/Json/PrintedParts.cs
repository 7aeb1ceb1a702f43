// What parts and readings say of themselves when they are printed: what a visit file says of them. It is said here and not
// beside the type, so that parts and decisions know nothing of JSON.
#pragma warning disable IDE0130 // The types live in the rooms below.
using TreadmillMech.Json;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech
{
    public sealed partial record Treadmill
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Demand
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }
}

namespace TreadmillMech.Parts
{
    public sealed partial record RunningBelt
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Roller
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record TakeUp
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Deck
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Plate
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record DriveBelt
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record DcMotor
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Supply
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Person
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Rails
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Bearing
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record BoltRod
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Collar
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record DeckBoard
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record RollerTube
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record StaticFriction
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record WearPair
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Magnets
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record InductionMotor
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record MotorCooling
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record MotorThermal
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record DeckThermal
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record SpeedController
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record DriveDynamics
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }
}

namespace TreadmillMech.Service
{
    public sealed partial record EarlierVisit
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }

    public sealed partial record Usage
    {
        /// <summary>What is known of it, as a visit file writes it, on one line; invariant.</summary>
        public override string ToString() => OneLine.Of(this);
    }
}

namespace TreadmillMech.Service.Events
{
    public abstract partial record VisitEvent
    {
        /// <summary>What was read or done, as a visit file writes it, on one line; invariant.</summary>
        public sealed override string ToString() => OneLine.Fields(EventKind.Any, this);
    }
}
