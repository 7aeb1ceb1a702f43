// Inputs and outputs of the model by the library's names, in its order.
#pragma once

#define TM_INPUTS(X) \
  X(BeltWidth) X(BeltThickness) X(BeltMassPerArea) X(BeltStiffness) X(RestTension) X(DriveRollerDiameter) \
  X(TailRollerDiameter) X(DriveRollerInertia) X(TailRollerInertia) X(CentreDistance) X(DriveHubCompliance) \
  X(TailHubCompliance) X(ThreadLead) X(BoltAngle) X(LeftTurns) X(RightTurns) X(DriveRollerFriction) \
  X(DeckFriction) X(BeltDrag) X(DriveBeltTension) X(DriveBeltFriction) X(GrooveHalfAngle) \
  X(DriveBeltMassPerLength) X(MotorPulleyDiameter) X(RollerPulleyDiameter) X(PulleyCentreDistance) \
  X(MotorConstant) X(ArmatureResistance) X(BrushDrop) X(MotorFrictionTorque) X(ControllerEfficiency) \
  X(StandbyPower) X(PowerFactor) X(MainsVoltage) X(MotorVoltageLimit) X(MotorCurrentLimit) X(PersonMass) \
  X(LegLength) X(BeltSpeed) X(Incline) X(StrikePosition) X(StepFrequency) X(BrakingPeak) X(RailSupport) \
  X(RailForce)

#define TM_OUTPUTS(X) \
  X(LoopLength) X(DriveRollerWrap) X(StepFrequencyUsed) X(DutyFactor) X(ContactTime) X(PeakFootForce) \
  X(MeanPull) X(PeakPull) X(LeastPull) X(RmsPull) X(DeckFrictionPower) X(PullPower) X(TensionNow) \
  X(CentrifugalTension) X(SlackTension) X(TightTension) X(BeltMargin) X(BeltSlide) X(DriveRollerHubLoad) \
  X(TailRollerHubLoad) X(DriveBeltMargin) X(DriveBeltSlide) X(MotorHubLoad) X(MotorSpeed) X(MotorTorque) \
  X(MeanCurrent) X(PeakCurrent) X(RmsCurrent) X(MotorVoltage) X(MainsPower) X(MainsCurrent) X(NoticeBits)

#define TM_FIELD(name) T name;
#define TM_NAME(name) #name,

template <class T> struct Machine {
  TM_INPUTS(TM_FIELD)
};

template <class T> struct Point {
  TM_OUTPUTS(TM_FIELD)
};

inline const char *const InputNames[] = {TM_INPUTS(TM_NAME)};
inline const char *const OutputNames[] = {TM_OUTPUTS(TM_NAME)};
constexpr int InputCount = sizeof(InputNames) / sizeof(InputNames[0]);
constexpr int OutputCount = sizeof(OutputNames) / sizeof(OutputNames[0]);
