using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Training;

/// <summary>Files of the folder <c>training</c> as they break in real life: each must be told in plain words, and nothing may be lost.</summary>
public sealed class BrokenTrainingTests
{
    private const string Exercises = "training/exercises.csv";
    private const string Exercise = "exercise,pattern,quality,load_basis,own_maximum_percent,least_percent,most_percent,least_height_in,most_height_in,unilateral,repetition_time_s,jump_contacts,impact\n";
    private const string Schemes = "training/schemes.csv";
    private const string Scheme = "scheme,kind,qualities,sets,repetitions,least_percent,most_percent,rest_s,interval_s,inner_rest_s,partner_repetitions\n";
    private const string Kinds = "training/day-kinds.csv";
    private const string Kind = "kind,quality,least,most,own_work\n";
    private const string Shapes = "training/week-shapes.csv";
    private const string Shape = "phase,weekday,days_to_game,kind,minutes\n";
    private const string Rules = "training/rules.csv";
    private const string Rule = "rule,value,unit,handling\n";
    private const string Calendar = "training/calendar.csv";
    private const string Session = "date,start,kind,minutes,room,groups\n";
    private const string Rooms = "training/rooms.csv";
    private const string Weights = "training/weights.csv";
    private const string Restrictions = "training/restrictions.csv";
    private const string Restriction = "athlete_id,from,to,out,note\n";
    private const string Plan = "training/plan.csv";
    private const string Choice = "date,group,athlete_id,exercise,scheme,part,keep,sets,repetitions,load_lb\n";

    /// <summary>File, its text, rows in it, rows held back, and what the first held-back entry must say (reason and remedy).</summary>
    public static TheoryData<string, string, string, int, int, string> BrokenText => new()
    {
        { "pattern not known", Exercises, Exercise + "box_squat,sqaut,maximal_strength,none,,,,,,no,4,0,none\n", 1, 1, "the pattern 'sqaut' is not known; did you mean squat?|squat, hinge, single_leg" },
        { "quality not known", Exercises, Exercise + "box_squat,squat,max strength,none,,,,,,no,4,0,none\n", 1, 1, "the quality 'max strength' is not known|maximal_strength" },
        { "no pattern", Exercises, Exercise + "box_squat,,maximal_strength,none,,,,,,no,4,0,none\n", 1, 1, "there is no pattern|squat, hinge" },
        { "no identifier", Exercises, Exercise + ",squat,maximal_strength,none,,,,,,no,4,0,none\n", 1, 1, "there is no exercise|Fill in" },
        { "exercise called like a pattern", Exercises, Exercise + "Squat,squat,maximal_strength,none,,,,,,no,4,0,none\n", 1, 1, "'squat' is the word of a pattern|more closely" },
        { "same exercise twice", Exercises, Exercise + "box_squat,squat,maximal_strength,none,,,,,,no,4,0,none\nBox Squat,squat,maximal_strength,none,,,,,,no,4,0,none\n", 2, 1, "the exercise 'box_squat' already stands in line 2|identifier of its own" },
        { "range of per cent upside down", Exercises, Exercise + "box_squat,squat,maximal_strength,back_squat,,90,40,,,no,4,0,none\n", 1, 1, "range of per cent is upside down|Swap" },
        { "range of heights upside down", Exercises, Exercise + "hop,jump,reactive_ability,height,,,,30,12,no,1,1,low\n", 1, 1, "range of heights is upside down|Swap" },
        { "height without heights", Exercises, Exercise + "hop,jump,reactive_ability,height,,,,,,no,1,1,low\n", 1, 1, "load_basis is height, but the least or the most height is missing|least_height_in" },
        { "heights without height", Exercises, Exercise + "hop,jump,reactive_ability,none,,,,12,30,no,1,1,low\n", 1, 1, "a height is given, but load_basis is not height|Write height" },
        { "height in cm under inches", Exercises, Exercise + "hop,jump,reactive_ability,height,,,,12,76,no,1,1,low\n", 1, 1, "76 in is outside the allowed 1.97 to 59 in; it looks like cm|29.92" },
        { "per cent of nothing", Exercises, Exercise + "hop,jump,reactive_ability,none,,10,20,,,no,1,1,low\n", 1, 1, "per cent are given, but load_basis says of nothing|body_mass" },
        { "own maximum of no lift", Exercises, Exercise + "yoke,carry,trunk_control,body_mass,80,10,20,,,no,9,0,none\n", 1, 1, "load_basis names no lift|Name the lift" },
        { "unilateral in words", Exercises, Exercise + "lunge,single_leg,maximal_strength,none,,,,,,each leg,3,0,none\n", 1, 1, "the answer 'each leg' is not known|yes, no" },
        { "no time", Exercises, Exercise + "lunge,single_leg,maximal_strength,none,,,,,,yes,,0,none\n", 1, 1, "there is no time of a repetition|Fill in" },
        { "time without unit", Exercises, "exercise,pattern,quality,repetition_time\nlunge,single_leg,maximal_strength,3\n", 1, 1, "'repetition_time' does not say its unit|repetition_time_s, repetition_time_ms" },
        { "impact without contacts", Exercises, Exercise + "hop,jump,reactive_ability,none,,,,,,no,1,0,high\n", 1, 1, "an impact is given, but no jump contacts|jump_contacts" },
        { "contacts without impact", Exercises, Exercise + "hop,jump,reactive_ability,none,,,,,,no,1,1,\n", 1, 1, "there are jump contacts, but no impact|none, low, middle, high" },
        { "stray column of a spreadsheet", Exercises, "exercise,pattern,quality,repetition_time_s,\nlunge,single_leg,maximal_strength,3,x\n", 1, 1, "column 5 has a value but no head|head" },
        { "text without end", Exercises, "exercise,pattern,quality,repetition_time_s,caution\nlunge,single_leg,maximal_strength,3," + new string('x', 400) + "\n", 1, 1, "the caution has 400 characters|Shorten" },

        { "negative rest", Schemes, Scheme + "fives,straight,maximal_strength,5,5,75,75,-60,,,\n", 1, 1, "-60 s is outside the allowed 0 to 900 s|Correct" },
        { "minutes under seconds", Schemes, "scheme,qualities,sets,repetitions,rest_min\nfives,maximal_strength,5,5,120\n", 1, 1, "120 min is outside the allowed 0 to 15 min; it looks like s|write 2" },
        { "no rest", Schemes, Scheme + "fives,straight,maximal_strength,5,5,75,75,,,,\n", 1, 1, "there is no rest between sets|rest_s" },
        { "on the minute without interval", Schemes, Scheme + "doubles,on the minute,explosive_power,6,2,80,80,,,,\n", 1, 1, "a scheme on the minute has no interval|60 for a set each minute" },
        { "interval of straight sets", Schemes, Scheme + "fives,straight,maximal_strength,5,5,75,75,60,60,,\n", 1, 1, "an interval is given, but the kind is not on_the_minute|on_the_minute" },
        { "contrast without repetitions of the partner", Schemes, Scheme + "pair,contrast,maximal_strength,4,3,80,80,120,,90,\n", 1, 1, "no repetitions of the reactive movement|partner_repetitions" },
        { "contrast without rest before the partner", Schemes, Scheme + "pair,contrast,maximal_strength,4,3,80,80,120,,,4\n", 1, 1, "no rest between the heavy lift and the reactive movement|inner_rest_s" },
        { "cluster without inner rest", Schemes, Scheme + "c,cluster,maximal_strength,4,3,80,80,120,,,\n", 1, 1, "a cluster has no rest between its repetitions|inner_rest_s" },
        { "ramp that does not rise", Schemes, Scheme + "up,ramp,explosive_power,5,2,80,80,120,,,\n", 1, 1, "a ramp builds up|greater most_percent" },
        { "per cent upside down", Schemes, Scheme + "fives,straight,maximal_strength,5,5,85,75,60,,,\n", 1, 1, "range of per cent is upside down|Swap" },
        { "kind not known", Schemes, Scheme + "fives,strait,maximal_strength,5,5,75,75,60,,,\n", 1, 1, "the kind 'strait' is not known; did you mean straight?|straight, cluster" },
        { "one of several qualities not known", Schemes, Scheme + "fives,straight,maximal_strength+acelleration,5,5,75,75,60,,,\n", 1, 1, "the quality 'acelleration' is not known; did you mean acceleration?|join several by +" },
        { "same scheme twice", Schemes, Scheme + "fives,straight,maximal_strength,5,5,75,75,60,,,\nfives,straight,maximal_strength,5,5,80,80,60,,,\n", 2, 1, "the scheme 'fives' already stands in line 2|identifier of its own" },
        { "sets not whole", Schemes, Scheme + "fives,straight,maximal_strength,2.5,5,75,75,60,,,\n", 1, 1, "2.5 is not a whole number|whole number" },

        { "kind of day called game", Kinds, Kind + "game,acceleration,1,2,yes\n", 1, 1, "'game' is the word of a game|something else" },
        { "same quality of a kind twice", Kinds, Kind + "speed,acceleration,1,2,yes\nspeed,acceleration,0,1,no\n", 2, 1, "this quality of this kind of day already stands in line 2|Keep one" },
        { "more needed than allowed", Kinds, Kind + "mine,acceleration,3,2,yes\n", 1, 1, "number of exercises is upside down|Swap" },
        { "row that allows nothing", Kinds, Kind + "mine,acceleration,0,0,no\n", 1, 1, "the row allows nothing|delete the row" },

        { "phase not known", Shapes, Shape + "offseason,monday,,power,60\n", 1, 1, "the phase 'offseason' is not known; did you mean off_season?|off_season, pre_season, in_season" },
        { "neither weekday nor days to game", Shapes, Shape + "off_season,,,power,60\n", 1, 1, "neither a weekday nor days_to_game|one of the two" },
        { "weekday and days to game", Shapes, Shape + "off_season,monday,3,power,60\n", 1, 1, "a weekday and days_to_game|one of the two" },
        { "two sessions of a usual day", Shapes, Shape + "off_season,monday,,power,60\noff_season,Monday,,speed,60\n", 2, 1, "a session of this phase and day already stands in line 2|Keep one" },
        { "kind of a usual week not known", Shapes, Shape + "off_season,monday,,powr,60\n", 1, 1, "the kind 'powr' is not known; did you mean power?|day-kinds.csv" },

        { "rule not known", Rules, Rule + "heavy_lower_gab,72,h,\n", 1, 1, "the rule 'heavy_lower_gab' is not known; did you mean heavy_lower_gap?|heavy_percent, heavy_lower_gap" },
        { "unit of a rule", Rules, Rule + "heavy_lower_gap,3,days,\n", 1, 1, "the unit 'days' is not that of heavy_lower_gap|Write the value in h" },
        { "rule without unit", Rules, Rule + "heavy_lower_gap,72,,\n", 1, 1, "the figure of heavy_lower_gap has no unit|Write the value in h" },
        { "figure of a rule out of range", Rules, Rule + "heavy_percent,0.8,%,\n", 1, 1, "0.8 % is outside what heavy_percent allows, 50 to 100 %|own figure is 80 %" },
        { "figure that is nothing", Rules, Rule + "hard_sets,0,sets,\n", 1, 1, "0 sets is outside what hard_sets allows, 1 to 100 sets|own figure is 12 sets" },
        { "figure of a rule without one", Rules, Rule + "session_order,3,,\n", 1, 1, "the rule session_order has no figure|handling" },
        { "restrictions flagged", Rules, Rule + "restrictions,,,flag\n", 1, 1, "restrictions cannot be flagged: what players may not do is said by medical staff|restrictions.csv" },
        { "restrictions off", Rules, Rule + "restrictions,,,off\n", 1, 1, "restrictions cannot be switched off: what players may not do is said by medical staff|restrictions.csv" },
        { "figure switched off", Rules, Rule + "heavy_percent,,,off\n", 1, 1, "heavy_percent cannot be switched off: it is a figure that other rules|Change its value" },
        { "demands switched off", Rules, Rule + "day_demands,,,off\n", 1, 1, "day_demands cannot be switched off: without it no day asks for anything|Write flag" },
        { "handling not known", Rules, Rule + "hard_sets,,,ignore\n", 1, 1, "the handling 'ignore' is not known|refuse, flag, off" },
        { "same rule twice", Rules, Rule + "hard_sets,10,sets,\nhard_sets,14,sets,\n", 2, 1, "the rule 'hard_sets' already stands in line 2|Keep one" },

        { "kind of a session not known", Calendar, Session + "2026-03-02,07:00,sped,60,,\n", 1, 1, "the kind 'sped' is not known; did you mean speed?|max_strength, power, speed" },
        { "room not known", Calendar, Session + "2026-03-02,07:00,speed,60,weigth room,\n", 1, 1, "the room 'weigth room' is not known; did you mean weight room?|rooms.csv" },
        { "group not known", Calendar, Session + "2026-03-02,07:00,speed,60,,Linebackers+Reciever\n", 1, 1, "the group 'Reciever' is not known; did you mean Receivers?|Linebackers, Offensive line, Receivers" },
        { "session outside the season", Calendar, Session + "2026-09-02,07:00,speed,60,,\n", 1, 1, "2026-09-02 is outside the season, 2026-01-05 to 2026-07-31|season.json" },
        { "session without minutes", Calendar, Session + "2026-03-02,07:00,speed,,,\n", 1, 1, "there is no number of minutes|Fill in" },
        { "hours for minutes", Calendar, Session + "2026-03-02,07:00,speed,1.5,,\n", 1, 1, "1.5 is outside the allowed 10 to 240|Correct" },
        { "time in words", Calendar, Session + "2026-03-02,7 am,speed,60,,\n", 1, 1, "'7 am' is not a time of day|16:00" },
        { "two games on one day", Calendar, Session + "2026-03-07,15:00,game,,,\n2026-03-07,19:00,Game,,,\n", 2, 1, "a game of 2026-03-07 already stands in line 2|delete one" },
        { "session on the day of a game", Calendar, Session + "2026-03-07,07:00,speed,60,,\n2026-03-07,15:00,game,,,\n", 2, 1, "there is a game on 2026-03-07 (line 3)|another day" },
        { "two sessions of one group at one time", Calendar, Session + "2026-03-02,07:00,speed,60,,Linebackers\n2026-03-02,07:45,power,60,,Receivers+Linebackers\n", 2, 1, "the group Linebackers would be in two sessions at the same time: the one in line 2 is from 07:00 for 60 minutes|groups of each session" },
        { "session begun before the one of the evening ended", Calendar, Session + "2026-03-02,23:30,speed,60,,\n2026-03-03,00:15,power,60,,\n", 2, 1, "all groups would be in two sessions at the same time: the one in line 2 is from 2026-03-02 23:30 for 60 minutes|groups of each session" },
        { "two sessions of all at one time", Calendar, Session + "2026-03-02,07:00,speed,60,,\n2026-03-02,07:00,power,60,,\n", 2, 1, "all groups would be in two sessions at the same time|groups of each session" },
        { "two sessions without starts", Calendar, Session + "2026-03-02,,speed,60,,\n2026-03-02,16:00,power,60,,Receivers\n", 2, 1, "the group Receivers already has a session on 2026-03-02 in line 2, and without both starts|Fill in start" },

        { "station twice", Rooms, "room,station,places\nhall,rack,4\nHall,Rack,5\n", 2, 1, "this station of this room already stands in line 2|one row" },
        { "half a place", Rooms, "room,station,places\nhall,rack,4.5\n", 1, 1, "4.5 is not a whole number|whole number" },
        { "two bars", Weights, "item,weight_lb,pairs\nbar,45,\nbar,35,\nplate,45,3\n", 3, 1, "a bar already stands in line 2|one bar" },
        { "plate without pairs", Weights, "item,weight_lb,pairs\nbar,45,\nplate,45,\n", 2, 1, "there is no number of pairs|at one station" },
        { "pairs of a dumbbell", Weights, "item,weight_lb,pairs\nbar,45,\nplate,45,3\ndumbbell,50,2\n", 3, 1, "pairs are for plates|Empty" },
        { "weight without unit", Weights, "item,weight,pairs\nbar,45,\n", 1, 1, "'weight' does not say its unit|weight_lb, weight_kg" },

        { "unknown player restricted", Restrictions, Restriction + "P0O1,2026-03-01,,jump,\n", 1, 1, "'P0O1' is not in athletes.csv|P001 (Ada Stone)" },
        { "restriction not known", Restrictions, Restriction + "P001,2026-03-01,,jumps,\n", 1, 1, "the restriction 'jumps' is not known; did you mean jump?|as if he were free" },
        { "one of several restrictions not known", Restrictions, Restriction + "P001,2026-03-01,,jump+overhed_press,\n", 1, 1, "the restriction 'overhed_press' is not known; did you mean overhead_press?|an exercise of exercises.csv" },
        { "restriction of nothing", Restrictions, Restriction + "P001,2026-03-01,,,knee\n", 1, 1, "there is no word for what is out|Fill in" },
        { "restriction backwards", Restrictions, Restriction + "P001,2026-03-20,2026-03-01,jump,\n", 1, 1, "ends on 2026-03-01, before it begins on 2026-03-20|Swap" },

        { "unknown exercise in a plan", Plan, Choice + "2026-03-02,Linebackers,,back_sqaut,,,keep,,,\n", 1, 1, "the exercise 'back_sqaut' is not known; did you mean back_squat?|exercises.csv" },
        { "scheme outside the known", Plan, Choice + "2026-03-02,Linebackers,,back_squat,strength_5x5_57,,keep,,,\n", 1, 1, "the scheme 'strength_5x5_57' is not known; did you mean strength_5x5_75?|schemes.csv" },
        { "plan for nobody", Plan, Choice + "2026-03-02,,,back_squat,,,keep,,,\n", 1, 1, "neither a group nor a player|one of group and athlete_id" },
        { "plan for a group and a player", Plan, Choice + "2026-03-02,Linebackers,P001,back_squat,,,keep,,,\n", 1, 1, "names a group and a player|one of group and athlete_id" },
        { "plan for an unknown group", Plan, Choice + "2026-03-02,Linebacker,,back_squat,,,keep,,,\n", 1, 1, "the group 'Linebacker' is not known; did you mean Linebackers?|athletes.csv" },
        { "plan outside the season", Plan, Choice + "2025-03-02,Linebackers,,back_squat,,,keep,,,\n", 1, 1, "2025-03-02 is outside the season|season.json" },
        { "plan with another word", Plan, Choice + "2026-03-02,Linebackers,,back_squat,,,kept,,,\n", 1, 1, "the keep 'kept' is not known|planned, keep, never" },
        { "kept and never", Plan, Choice + "2026-03-02,Linebackers,,back_squat,strength_5x5_75,,keep,,,\n2026-03-02,Linebackers,,back_squat,,,never,,,\n", 2, 1, "the opposite (keep) of this exercise and day already stands in line 2|Keep the row that holds" },
        { "planned twice", Plan, Choice + "2026-03-02,Linebackers,,back_squat,,,,,,\n2026-03-02,Linebackers,,Back squat,,shared,,,,\n", 2, 1, "the same exercise of the same day already stands in line 2|Delete one" },
        { "planned load in letters", Plan, Choice + "2026-03-02,,P001,back_squat,,,,5,5,3O5\n", 1, 1, "'3O5' is not a plain number|number only" },

        { "file of another name", "training/exercise.csv", Exercise, 0, 0, "the name is none of exercises, schemes, day-kinds|Did you mean exercises.csv?" },
        { "workbook of training", "training/exercises.xlsx", "x", 0, 0, "files of this kind (.xlsx) are not read here|Save it as exercises.csv" },
        { "empty file of training", Exercises, "", 0, 0, "the file is empty|Save it again" },
    };

    [Theory]
    [MemberData(nameof(BrokenText))]
    public void Read_BrokenText_SaysWhatWhereAndHowToMend(string what, string path, string text, int rows, int heldBack, string says)
    {
        Assert.NotEmpty(what);
        var data = BrokenFile.IsTold(path, text, rows, heldBack, says);
        // Planning always has what it needs.
        Assert.NotEmpty(data.Training.Exercises.All);
        Assert.NotEmpty(data.Training.Kinds);
        Assert.Equal(3, data.Training.Shapes.Count);
    }
}
