using Sightglass.Plant.Kinds.Access;
using Sightglass.Plant.Kinds.Air;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Kinds.Fuel;
using Sightglass.Plant.Kinds.Heat;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Kinds.RunningGear;
using Sightglass.Plant.Kinds.ThreePhase;
using Sightglass.Plant.Kinds.TrainControl;

namespace Sightglass.Plant.Kinds;

/// <summary>The list that a new kind is added to.</summary>
internal static class AllKinds
{
    public static KindBuilder[] Create() =>
    [
        new TankKind(),
        new FuelLineKind(),
        new OrificeKind(),
        new HandValveKind(),
        new DrainCockKind(),
        new CutOffValveKind(),
        new ActuatedValveKind(),
        new PipeKind(),
        new CheckValveKind(),
        new DisplacementPumpKind(),
        new FilterKind(),
        new FillPortKind(),
        new EngineKind(),
        new ReservoirKind(),
        new AirLineKind(),
        new HoseKind(),
        new HoseCouplingKind(),
        new HosePairKind(),
        new CompressorKind(),
        new AirCoolerKind(),
        new AirDryerKind(),
        new GovernorKind(),
        new SafetyValveKind(),
        new RegulatingValveKind(),
        new RelayValveKind(),
        new DoubleCheckKind(),
        new ControlValveKind(),
        new ReleaseValveKind(),
        new VentValveKind(),
        new BrakeCylinderKind(),
        new SpringBrakeKind(),
        new SpringReleaseKind(),
        new CutoutCockKind(),
        new WireKind(),
        new BatteryKind(),
        new ChargerKind(),
        new StarterKind(),
        new CableKind(),
        new KnifeSwitchKind(),
        new BreakerKind(),
        new ContactorKind(),
        new ContactKind(),
        new LoadKind(),
        new ElectricLampKind(),
        new DiodeKind(),
        new NotchDecoderKind(),
        new BusbarKind(),
        new ThreePhaseSourceKind(),
        new ThreePhaseCableKind(),
        new ThreePhaseBreakerKind(),
        new ThreePhaseContactKind(),
        new ThreePhaseLoadKind(),
        new ReceptacleKind(),
        new JumperKind(),
        new ThermalMassKind(),
        new HeatSourceKind(),
        new HeatExchangerKind(),
        new FanKind(),
        new ScreenKind(),
        new ShutterKind(),
        new HandleKind("handle", "A handle with positions.", []),
        new HandleKind("switch", "A switch.", "off", "on"),
        new PushButtonKind(),
        new DoorKind(),
        new PassageKind(),
        new WindowKind(),
        new KitKind(),
        new CouplerKind(),
        new CouplerLockKind(),
        new AxleKind(),
        new BrakeRodKind(),
        new CodeSenderKind(),
        new PickupKind(),
        new BodyKind(),
        new TruckFrameKind(),
        new EqualiserKind(),
        new SpringKind(),
        new CarriedLoadKind(),
        new GaugeKind(),
        new SightGlassKind(),
        new LampKind(),
        new TransmitterKind(),
        new RelayKind(),
        new DescribedKind(),
    ];
}
