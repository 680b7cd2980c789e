using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Training;

/// <summary>The targets of the coach, as <c>targets.csv</c> says them.</summary>
public sealed class TargetsTests
{
    private const string File = "training/targets.csv";
    private const string Head = "group,metric,value,unit,note\n";

    /// <summary>The metrics a target can be set in, as every remedy lists them: those of docs/metrics.md with a better direction and a quality that weeks train.</summary>
    private const string Ids = "back_squat_1rm, bench_press_1rm, power_clean_1rm, back_squat_relative, cmj_height, sj_height, cmj_peak_power, push_off_power, drop_jump_rsi, hurdle_rsi, hurdle_contact, standing_long_jump, "
        + "throw_overhead_back, throw_seated_chest, throw_standing_chest, throw_rotational, stair_power, clean_bar_power, sprint_10yd, sprint_20yd, sprint_40yd, sprint_10m, sprint_20m, sprint_40m, max_speed, sprint_max_power, "
        + "pro_agility, agility_505, three_cone, cod_deficit, cod_asymmetry, cod_deficit_asymmetry, contact_time, contact_speed";

    private static IEnumerable<(string? Group, string Metric, double Value, string Note)> Read(string text)
    {
        using var season = new TemporarySeason().With(File, text);
        var data = season.Read();
        Assert.Empty(data.HeldBack);
        Assert.Equal(["targets.csv"], data.Training.OwnFiles);
        return data.Training.Targets.Select(t => (t.Group, t.MetricId, Math.Round(t.Value, 7), t.Note));
    }

    // 450 lb x 0.45359237 = 204.1165665 kg; 30 in x 2.54 = 76.2 cm; 20 mph x 0.44704 = 8.9408 m/s, 20 ft x 0.3048 = 6.096 m, by definition.
    [Fact]
    public void Read_UnitsOfTheGym_AreThoseOfTheCatalogue()
        => Assert.Equal(
            [
                ("Linebackers", "back_squat_1rm", 204.1165665, "by June, no later"), (null, "cmj_height", 76.2, ""), (null, "max_speed", 8.9408, ""), ("Receivers", "sprint_10yd", 1.65, ""),
                (null, "throw_seated_chest", 6.096, ""), (null, "back_squat_relative", 1.8, ""), (null, "drop_jump_rsi", 2.1, ""), (null, "hurdle_contact", 0.17, ""),
            ],
            Read(Head + "linebackers,Back squat 1RM,450,LB,\"by June, no later\"\n,cmj_height,30,in,\n,max_speed,20,mph,\nReceivers,sprint_10yd,1.65,s,\n,throw_seated_chest,20,ft,\n,back_squat_relative,1.8,,\n,drop_jump_rsi,2.1,m/s,\n,hurdle_contact,170,ms,\n"));

    [Fact]
    public void Read_SemicolonsAndDecimalCommas_OtherHeadsAndOrder()
    {
        using var season = new TemporarySeason().With(File, "Unit;Target;Test;Group;coach\nkg;182,5;back_squat_1rm;Linebackers;me\nkg;195,0;back_squat_1rm;;me\n");
        var data = season.Read();
        Assert.Empty(data.HeldBack);
        Assert.Equal([("Linebackers", 182.5), (null, 195)], data.Training.Targets.Select(t => (t.Group, t.Value)));
        Assert.Contains(data.Notes, n => n.File == File && n.Text == "The column 'coach' is not known and was not read.");
    }

    // 5.5 W is no power of a jump, so the comma groups thousands; 4.500 m and 4500 m leave one too.
    [Fact]
    public void Read_CommaBeforeThreeDigits_IsReadAsTheRangeAllows()
        => Assert.Equal([5500, 4.5], Read(Head + ",cmj_peak_power,\"5,500\",W,\n,throw_seated_chest,\"4,500\",m,\n").Select(t => t.Value));

    [Fact]
    public void Read_NoFile_HasNoTargets()
    {
        using var season = new TemporarySeason();
        Assert.Empty(season.Read().Training.Targets);
    }

    [Fact]
    public void Read_ForAGroupAndForAll_BothStay()
        => Assert.Equal([("Linebackers", 200), (null, 180)], Read(Head + "Linebackers,back_squat_1rm,200,kg,\n,back_squat_1rm,180,kg,\n").Select(t => (t.Group, t.Value)));

    /// <summary>The row, the column told, the value, the whole reason and the whole remedy.</summary>
    public static TheoryData<string, string, string, string, string> Broken => new()
    {
        { ",back_sqat_1rm,200,kg,", "metric", "back_sqat_1rm", "The metric 'back_sqat_1rm' is not known; did you mean back_squat_1rm?", $"Use one of: {Ids}." },
        { ",back_squat,200,kg,", "metric", "back_squat", "The metric 'back_squat' is not known; did you mean back_squat_1rm?", $"Use one of: {Ids}." },
        { ",grip,60,kg,", "metric", "grip", "The metric 'grip' is not known.", $"Use one of: {Ids}." },
        { ",,60,kg,", "metric", "", "There is no metric.", "Fill in the metric." },
        { ",body_mass,100,kg,", "metric", "body_mass", "The metric body_mass tells of no need, because neither more nor less of it is better.", $"Set the target in one of: {Ids}." },
        { ",momentum_10yd,600,kg·m/s,", "metric", "momentum_10yd", "The metric momentum_10yd tells of no need, because no exercise of a week trains it by itself.", $"Set the target in one of: {Ids}." },
        { ",back_squat_1rm,200,,", "unit", "", "The target of back_squat_1rm has no unit.", "Write lb or kg as unit." },
        { ",back_squat_1rm,200,cm,", "unit", "cm", "The unit 'cm' is not one of back_squat_1rm.", "Write lb or kg as unit." },
        { ",back_squat_1rm,200,lbs,", "unit", "lbs", "The unit 'lbs' is not one of back_squat_1rm; did you mean lb?", "Write lb or kg as unit." },
        { ",drop_jump_rsi,2,mph,", "unit", "mph", "The unit 'mph' is not one of drop_jump_rsi.", "Write m/s as unit." },
        { ",back_squat_relative,2,kg,", "unit", "kg", "The unit 'kg' is not one of back_squat_relative.", "Write kg/kg as unit, or leave the cell empty." },
        // 40 to 400 kg in docs/metrics.md; in lb 88.18 to 881.8, shown rounded to what is allowed.
        { ",back_squat_1rm,45,lb,", "value", "45", "45 lb is outside the allowed 88.2 to 881 lb; it looks like kg.", "If it is kg, write kg as unit; else correct the value." },
        { ",sprint_10yd,17,s,", "value", "17", "17 s is outside the allowed 1.2 to 2.6 s; it looks like a decimal point is missing.", "Correct the value, or its unit." },
        { ",sprint_10yd,1650,s,", "value", "1650", "1650 s is outside the allowed 1.2 to 2.6 s; it looks like ms.", "If it is ms, write ms as unit; else correct the value." },
        { ",back_squat_1rm,450lb,lb,", "value", "450lb", "'450lb' is not a plain number.", "Write the number only; its unit stands in the column unit." },
        { ",back_squat_1rm,,lb,", "value", "", "There is no value.", "Fill in the value." },
        { "Linebacker,back_squat_1rm,200,kg,", "group", "Linebacker", "The group 'Linebacker' is not known; did you mean Linebackers?", "Use one of: Linebackers, Offensive line, Receivers; or add it to athletes.csv." },
        { "Kickers,back_squat_1rm,2OO,stone,", "group", "Kickers", "The group 'Kickers' is not known; also unit: the unit 'stone' is not one of back_squat_1rm.", "Use one of: Linebackers, Offensive line, Receivers; or add it to athletes.csv." },
        { ",back_squat_1rm,200,kg,,x", "", "x", "The row has 6 cells, the head has 5 columns.", "Take out the extra separator, or put quotes round a text that holds one." },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Read_RowThatCannotBeUsed_SaysWhatWhereAndHowToMend(string row, string column, string value, string reason, string remedy)
    {
        using var season = new TemporarySeason().With(File, Head + "Receivers,cmj_height,60,cm,\n" + row + "\n");
        var data = season.Read();
        // What stands beside it is kept.
        Assert.Equal("cmj_height", Assert.Single(data.Training.Targets).MetricId);
        var held = Assert.Single(data.HeldBack);
        Assert.Equal((File, 3, column, value, reason, remedy), (held.File, held.Line, held.Column, held.Value, held.Reason, held.Remedy));
    }

    [Theory]
    [InlineData("Linebackers,back_squat_1rm,200,kg,\nlinebackers,Back squat 1RM,440,lb,\n", "A target of back_squat_1rm for the group Linebackers already stands in line 2.")]
    [InlineData(",back_squat_1rm,200,kg,\n,back_squat_1rm,200,kg,\n", "A target of back_squat_1rm for all groups already stands in line 2.")]
    public void Read_SameGroupAndMetricTwice_TheFirstStays(string rows, string reason)
    {
        using var season = new TemporarySeason().With(File, Head + rows);
        var data = season.Read();
        Assert.Equal(200, Assert.Single(data.Training.Targets).Value);
        var held = Assert.Single(data.HeldBack);
        Assert.Equal((3, "metric", reason, "Keep the row that holds, and delete the other."), (held.Line, held.Column, held.Reason, held.Remedy));
    }

    // The first could not be kept, so the second is no double.
    [Fact]
    public void Read_SameAgainAfterABrokenRow_IsKept()
    {
        using var season = new TemporarySeason().With(File, Head + ",back_squat_1rm,200,cm,\n,back_squat_1rm,190,kg,\n");
        var data = season.Read();
        Assert.Equal(190, Assert.Single(data.Training.Targets).Value);
        Assert.Equal(2, Assert.Single(data.HeldBack).Line);
    }

    [Theory]
    [InlineData("metric,unit\nback_squat_1rm,kg\n", "The column value is missing; the head has: metric, unit.")]
    [InlineData("group,value_kg\n,200\n", "The column metric is missing; the head has: group, value_kg.")]
    public void Read_HeadWithoutWhatIsNeeded_HoldsTheTableBack(string text, string reason)
    {
        using var season = new TemporarySeason().With(File, text);
        Assert.Equal(reason, Assert.Single(season.Read().HeldBack).Reason);
    }
}
