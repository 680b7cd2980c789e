namespace Analytics.Simulation.Demo.Squad;

/// <summary>The invented squad of the invented club: the same names whatever the seed.</summary>
public static class Roster
{
    public const string Club = "Tallow Creek Drovers";
    public const string Season = "2026 winter and spring";

    /// <summary>Names by group, in the order of <see cref="GroupNorm.All"/>.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> NamesByGroup { get; } =
    [
        [
            "Alden Brackwater", "Matalino Fuaveia", "Corvin Halloway-Pike", "Oluwadare Akinsemo", "Terrick Vandersloot",
            "Joaquim Belmirante", "Lasse Thorngaard", "Deshorn Whitlark", "Peniamina Tavuloa", "Gideon Crestmoor", "Bartek Zawolski",
        ],
        [
            "Kelechukwu Obarinde", "Ransom Tillerby", "Viliamu Se'utafi", "Marquell Ashdowner", "Dragomir Petkovan",
            "Jarreth Colgrave", "Ibrahima Sarrouba", "Tavion Merriwick", "Hemi Wharekawa", "Lorne Stackridge",
        ],
        [
            "Quillan Ferrowby", "Emeka Nwadioba", "Santos Villaquirre", "Braydon Hesketh-Lowe", "Tyrellis Monkford",
            "Isikeli Navosaru", "Callum Dunravenor", "Zubair Qasmani", "Devante Harrowgate",
        ],
        ["Anders Kvilhaug", "Rashaun Pellingham", "Mateo Arrizábal", "Fitzroy Blanchmere"],
        ["Jevonte Starling-Roe", "Kofi Ampretwum", "Cruz Montalvera", "Darnley Foxworthy", "Tevita Lolohani"],
        [
            "Xavion Brightmoor", "Théo Lacharrière", "Keyshon Underbank", "Adebowale Ogunsiji", "Niall Corrigmore",
            "Rafferty Senn", "Jamarcus Tidewell", "Hikaru Morinobe",
        ],
        [
            "Dontell Ravensby", "Ezekiel Wintergate", "Sulaiman Bangoura-Diop", "Trayce Hollinbrook", "Nico Santaverde",
            "Kahurangi Tepaki", "Lamond Greavesby", "Øyvin Strandheim", "Jaleel Crosswater", "Amadi Chukwuneme",
        ],
        ["Beckett Lorrimore", "Terrance Valdorne", "Kainoa Puukahele"],
    ];
}
