namespace TreadmillMech.Tests.Docs.Bibliography;

/// <summary>The works that laws, their checks and the methods of this project rest on.</summary>
internal static class Works
{
    internal static IReadOnlyList<Work> All { get; } =
    [
        Standard("ISO 21181", "ISO 21181:2013, Light conveyor belts, relaxed elastic modulus", "stiffness of the belt"),
        Standard(
            "ISO 21182",
            "ISO 21182:2013, Light conveyor belts, coefficient of friction",
            "friction of belt on deck"
        ),
        Standard(
            "ISO 281",
            "ISO 281:2007, Rolling bearings, dynamic load ratings and rating life",
            "bearing life, as ratios"
        ),
        Standard("ISO 724", "ISO 724:1993, ISO metric screw threads, basic dimensions", "diameters of metric threads"),
        Standard("DIN 13-1", "DIN 13-1, ISO metric screw threads, with the rounded root", "minor diameter of bolts"),
        Standard("DIN 13-19", "DIN 13-19, ISO metric screw threads, nominal profiles", "check of the thread's profile"),
        Standard(
            "ISO 898-1",
            "ISO 898-1:2013, Fasteners, bolts of specified property classes",
            "stress area, proof loads"
        ),
        Standard("B1.1", "ASME B1.1 (ANSI B1.1), Unified inch screw threads", "inch threads"),
        Standard(
            "VDI 2230",
            "VDI 2230:2003 (checks: 2001), Systematic calculation of bolted joints",
            "torque and stress of bolts"
        ),
        Standard(
            "ISO 9981",
            "ISO 9981:2020, Belt drives, pulleys and V-ribbed belts, PK profile",
            "pitch diameter of ribbed pulleys"
        ),
        Standard(
            "ISO 9982",
            "ISO 9982, Belt drives, pulleys and V-ribbed belts for industrial use",
            "ribs and widths, from memory"
        ),
        Standard(
            "IEEE 112",
            "IEEE 112, Test procedure for polyphase induction motors",
            "copper's temperature from its resistance"
        ),
        Standard(
            "IEC 60034-1",
            "IEC 60034-1, Rotating electrical machines, rating and performance",
            "the same, rounded"
        ),
        Standard(
            "IEC 60028",
            "IEC 60028, Resistance of copper",
            "check of copper's temperature coefficient, from memory"
        ),
        Standard(
            "IEC 60404-8-1",
            "IEC 60404-8-1, Magnetic materials, permanent magnets",
            "what warmth takes from the magnets"
        ),
        Standard(
            "US National Electrical Code",
            "US National Electrical Code (NEC), 210.19 and 210.20",
            "lasting load of a circuit; a caution"
        ),
        Standard(
            "JCGM 100",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement",
            "propagation of uncertainty"
        ),
        Standard(
            "JCGM 101",
            "JCGM 101:2008, Propagation of distributions by a Monte Carlo method",
            "uncertainty by drawing"
        ),
        Book(
            "Shigley",
            "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
            "screws, beams, open belt, impact"
        ),
        Book(
            "Theory of Machines",
            "R. S. Khurmi, J. K. Gupta, Theory of Machines",
            "belt friction, wedging, velocity ratio, slip"
        ),
        Book(
            "Textbook of Machine Design",
            "R. S. Khurmi, J. K. Gupta, A Textbook of Machine Design",
            "load on a shaft by two strands"
        ),
        Book(
            "Roark",
            "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain",
            "bending of rollers, beams under axial tension"
        ),
        Book(
            "Beer and Johnston",
            "F. P. Beer, E. R. Johnston, Vector Mechanics: Statics",
            "friction on an incline; check of belt friction"
        ),
        Book("Timoshenko", "S. Timoshenko, Vibration Problems in Engineering", "frequency of a stiff span"),
        Book("Verma", "H. C. Verma, Concepts of Physics 1", "taut string"),
        Book("Den Hartog", "J. P. Den Hartog, Mechanical Vibrations", "damping of the belt, from memory"),
        Book("Wriggers", "P. Wriggers, Computational Contact Mechanics", "friction near standstill, from memory"),
        Book("Astrom and Hagglund", "K. J. Astrom, T. Hagglund, PID Controllers", "speed controller, from memory"),
        Book(
            "Fitzgerald",
            "A. E. Fitzgerald, C. Kingsley, S. D. Umans, Electric Machinery, 6th ed.",
            "direct-current and induction motors"
        ),
        Book(
            "Theraja",
            "B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, vol. III",
            "heating of motors"
        ),
        Book("Subrahmanyam", "V. Subrahmanyam, Electric Drives, 2nd ed.", "overloading of motors"),
        Book("Dubey", "G. K. Dubey, Fundamentals of Electrical Drives", "mean square of a load cycle"),
        Book("Mohan", "N. Mohan, T. M. Undeland, W. P. Robbins, Power Electronics", "duty ratio of a converter"),
        Book(
            "Incropera",
            "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer",
            "cooling by a shaft fan, lumped bodies"
        ),
        Book("Winter", "D. A. Winter, Biomechanics and Motor Control of Human Movement", "leg length from height"),
        Book("Perry", "J. Perry, Gait Analysis (1992)", "checks of stance and double support, from memory"),
        Book("Wentzell", "T. H. Wentzell, Machine Design (2004)", "checks"),
        Book("Mott", "R. L. Mott, Machine Elements in Mechanical Design", "checks"),
        Book("Faires", "V. M. Faires, Design of Machine Elements", "checks"),
        Book("Hamrock", "B. J. Hamrock, Fundamentals of Machine Elements", "checks"),
        Book("Chapman", "S. J. Chapman, Electric Machinery Fundamentals", "checks of the induction motor"),
        Book("Burman", "Burman, Special Electrical Machines", "checks of the direct-current motor"),
        Book("Rashid", "M. H. Rashid, Power Electronics", "check of the duty ratio, from memory"),
        Book("Sarkar", "Sarkar, Strength of Materials", "checks of beams"),
        Book(
            "Hairer",
            "E. Hairer, S. P. Norsett, G. Wanner, Solving Ordinary Differential Equations I and II",
            "the integrator in time"
        ),
        Paper(
            "Soderlind",
            "G. Soderlind 2003, Digital filters in adaptive time-stepping, ACM Transactions on Mathematical Software 29",
            "sizes of steps in time, from memory"
        ),
        Book(
            "Particle Data Group",
            "Particle Data Group, Review of Particle Physics, Introduction, 5.3",
            "how many digits an uncertainty is given with"
        ),
        Paper(
            "Archard",
            "J. F. Archard 1953, Contact and rubbing of flat surfaces, Journal of Applied Physics",
            "wear of belt and deck"
        ),
        Paper(
            "Armstrong-Helouvry",
            "B. Armstrong-Helouvry, P. Dupont, C. Canudas de Wit 1994, Automatica 30",
            "friction that falls with speed"
        ),
        Paper("Bird 1905", "W. W. Bird 1905, Belt creep, Transactions of the ASME", "elastic creep"),
        Paper(
            "Palmgren and Miner",
            "A. Palmgren 1924; M. A. Miner 1945, cumulative damage",
            "bearing life under mixed loads"
        ),
        Paper(
            "Shelton",
            "J. J. Shelton 1968, Lateral dynamics of a moving web, dissertation",
            "tracking of a wide belt"
        ),
        Paper(
            "10.1177/1687814017695955",
            "Adv. Mech. Eng. 2017, doi 10.1177/1687814017695955",
            "tracking: direction, drift in proportion to skew"
        ),
        Paper("Yoshida", "Yoshida et al. 2024, doi 10.15406/iratj.2024.10.00287", "crowned rollers"),
        Paper(
            "Alexander and Jayes 1980",
            "R. McN. Alexander, A. S. Jayes 1980, Fourier analysis of forces in walking and running",
            "force of a foot over time, duty factor"
        ),
        Paper(
            "Alexander and Jayes 1983",
            "R. McN. Alexander, A. S. Jayes 1983, A dynamic similarity hypothesis",
            "leg length, from memory"
        ),
        Paper(
            "Alexander 1989",
            "R. McN. Alexander 1989, Optimization and gaits in the locomotion of vertebrates",
            "where walking ends"
        ),
        Paper(
            "Kram",
            "R. Kram, A. Domingo, D. P. Ferris 1997, Preferred walk-run transition speed, J. Exp. Biol. 200",
            "check of where walking ends"
        ),
        Paper("Minetti 2001", "A. E. Minetti 2001, Walking on other planets, Nature 409", "reference leg"),
        Paper(
            "Kirtley",
            "C. Kirtley, M. W. Whittle, R. J. Jefferson 1985, Influence of walking speed on gait, J. Biomed. Eng. 7",
            "duty factor of walking"
        ),
        Paper(
            "Cavanagh and Lafortune 1980",
            "P. R. Cavanagh, M. A. Lafortune 1980, Ground reaction forces in distance running",
            "braking; check of peaks"
        ),
        Paper(
            "J. Exp. Biol. 2003",
            "J. Exp. Biol. 2003, walking with straight legs, previously unpublished means of twelve walkers",
            "walking: peak at 2.03 m/s"
        ),
        Paper(
            "Minka",
            "T. P. Minka 2001, Expectation propagation for approximate Bayesian inference",
            "outcomes of pass and fail in the joint estimate, from memory"
        ),
        Paper("Robinson", "R. O. Robinson, W. Herzog, B. M. Nigg 1987, symmetry index", "uneven feet"),
        Paper(
            "Karamanidis",
            "K. Karamanidis, A. Arampatzis 2005, J. Exp. Biol. (authors from memory)",
            "contact and cadence by age and activity"
        ),
        Paper(
            "Weyand",
            "P. G. Weyand, J. A. Davis 2005, Running performance and stance mean force",
            "check of the stance mean"
        ),
        Paper(
            "Keller",
            "T. S. Keller et al. 1996, Vertical ground reaction force with speed",
            "check of peaks, disagrees at 6 m/s"
        ),
        Paper(
            "Nilsson",
            "J. Nilsson, A. Thorstensson 1989, Ground reaction forces at different speeds",
            "check of peaks, from memory"
        ),
        Paper(
            "Munro",
            "C. F. Munro, D. I. Miller, A. J. Fuglevand 1987, Ground reaction forces in running",
            "check of peaks, from memory"
        ),
        Paper(
            "Hansen",
            "E. A. Hansen et al. 2017, Stride frequency for walk-to-run transition, Scientific Reports",
            "check of cadence"
        ),
        Paper(
            "Hum. Mov. Sci. 2023",
            "Cadence as an indicator of the walk-to-run transition, Hum. Mov. Sci. 90, 2023",
            "where walking ends"
        ),
        Paper(
            "xoshiro",
            "D. Blackman, S. Vigna 2021, Scrambled linear pseudorandom number generators (xoshiro256++)",
            "random numbers of studies"
        ),
        Data(
            "Alcantara",
            "R. S. Alcantara et al. 2021, 2022, runners on force-measuring treadmills",
            "running: duty factor, cadence, peaks"
        ),
        Data("Fukuchi", "R. K. Fukuchi, C. A. Fukuchi, M. Duarte 2017, running at three speeds", "running: peaks"),
        Data(
            "Hamner",
            "S. R. Hamner, A. Seth, S. L. Delp 2010, muscle contributions in running",
            "running: braking and push-off"
        ),
        Data(
            "open data of the OpenSim project",
            "One walker on a treadmill at about 1.1 m/s, open data of the OpenSim project",
            "walking: braking and push-off"
        ),
        Data(
            "van der Zee",
            "T. J. van der Zee et al. 2022, walking over a range of speeds, nine people",
            "walking: peaks, cadence"
        ),
    ];

    private static Work Standard(string mark, string reference, string use) =>
        new(WorkKind.Standard, mark, reference, use);

    private static Work Book(string mark, string reference, string use) => new(WorkKind.Book, mark, reference, use);

    private static Work Paper(string mark, string reference, string use) => new(WorkKind.Paper, mark, reference, use);

    private static Work Data(string mark, string reference, string use) => new(WorkKind.OpenData, mark, reference, use);
}
