using System.Globalization;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Squad;

/// <summary>Draws the squad: size, abilities, responses and habits of every athlete.</summary>
public static class PlayerFactory
{
    public static IReadOnlyList<Player> Draw(ulong seed, DemoOptions options)
    {
        var players = new List<Player>();
        for (var group = 0; group < GroupNorm.All.Count; group++)
        {
            var names = Roster.NamesByGroup[group];
            for (var place = 0; place < names.Count; place++)
                players.Add(DrawOne(seed, options, players.Count, GroupNorm.All[group], names[place], place));
        }

        foreach (var deficit in options.Deficits) players[deficit.Player] = deficit.In(players[deficit.Player]);
        return players;
    }

    private static Player DrawOne(ulong seed, DemoOptions options, int index, GroupNorm norm, string name, int place)
    {
        var random = RandomNumbers.For(seed, "athlete", index);
        var stature = norm.StatureInches + random.Normal(0, 1.2);
        var birthYear = 2002 + random.Below(6);
        var baseline = DrawAbility(random, norm);
        var cost = 0.032 + Within(random.Normal()) * 0.006;
        var lead = 0.22 + Within(random.Normal()) * 0.06;
        return new Player
        {
            Index = index,
            Id = "TC" + (index + 1).ToString("00", CultureInfo.InvariantCulture),
            Name = name,
            Position = norm.Positions[place % norm.Positions.Count],
            Norm = norm,
            StatureInches = (int)Math.Round(stature),
            BirthYear = birthYear,
            TrainingYears = DrawTrainingYears(seed, index, birthYear),
            Baseline = baseline,
            RepetitionCost = options.WithOwnRepetitionCurves ? cost : 0.032,
            StartLeadMetres = options.WithStartArtefact ? lead : 0,
            HangCleanShare = 0.93 + Within(random.Normal()) * 0.02,
            LiftsInSets = random.Chance(0.2),
            GainReached = Response.DrawPath(seed, index, options),
            SeasonGain = Response.Draw(seed, index, options),
        };
    }

    /// <summary>Most started at about fifteen; in half years, from a stream of its own.</summary>
    private static double DrawTrainingYears(ulong seed, int index, int birthYear)
    {
        var started = 15 + 1.2 * Within(RandomNumbers.For(seed, "training years", index).Normal());
        return Math.Max(0.5, Math.Round(2 * (SeasonCalendar.SeasonStart.Year - birthYear - started)) / 2);
    }

    /// <summary>
    /// Standardised scores within the group: heavier players are stronger, stronger ones jump higher and
    /// run faster, heavier ones run slower. Correlations are moderate: near .35, .4, .5 and -.25.
    /// </summary>
    private static Ability DrawAbility(RandomNumbers random, GroupNorm norm)
    {
        var size = Within(random.Normal());
        var strength = Mixed(random, (0.35, size));
        var jump = Mixed(random, (0.40, strength), (-0.25, size));
        var speed = Mixed(random, (0.50, jump), (-0.20, size));
        var squat = Mixed(random, (0.85, strength));
        var bench = Mixed(random, (0.70, strength));
        var clean = Mixed(random, (0.65, strength), (0.35, jump));
        var longJump = Mixed(random, (0.80, jump));
        var rebound = Mixed(random, (0.70, jump));
        var contact = Mixed(random, (-0.30, speed));
        var timeConstant = Mixed(random, (0.30, speed), (-0.35, strength));
        var agility = Mixed(random, (-0.55, speed), (0.25, size));
        var throwing = Mixed(random, (0.50, strength), (0.35, jump));
        var mass = norm.MassPounds + norm.MassDeviation * size;
        var jumpInches = norm.JumpInches * (1 + 0.08 * jump);
        return new Ability
        {
            MassPounds = mass,
            SquatPounds = norm.SquatPounds * (1 + 0.09 * squat),
            BenchPounds = norm.BenchPounds * (1 + 0.09 * bench),
            CleanPounds = norm.CleanPounds * (1 + 0.08 * clean),
            JumpInches = jumpInches,
            LongJumpInches = norm.LongJumpInches * (1 + 0.045 * longJump),
            DropJumpInches = norm.JumpInches * 0.62 * (1 + 0.09 * rebound),
            ContactMilliseconds = norm.ContactMilliseconds * (1 + 0.08 * contact),
            SpeedMetresPerSecond = norm.SpeedMetresPerSecond * (1 + 0.025 * speed),
            TimeConstantSeconds = norm.TimeConstantSeconds * (1 + 0.045 * timeConstant),
            AgilitySeconds = norm.AgilitySeconds * (1 + 0.022 * agility),
            ThrowMetres = norm.ThrowMetres * (1 + 0.07 * throwing),
            // Stair power per kilogram rises with the jump: 1.044 m in about half a second.
            StairSeconds = 0.50 * Math.Pow(27 / jumpInches, 0.4) * (1 + 0.03 * Within(random.Normal())),
        };
    }

    /// <summary>A standard score that carries part of others; the rest is its own.</summary>
    private static double Mixed(RandomNumbers random, params ReadOnlySpan<(double Weight, double Score)> parts)
    {
        double sum = 0, explained = 0;
        foreach (var (weight, score) in parts)
        {
            sum += weight * score;
            explained += weight * weight;
        }

        return Within(sum + Math.Sqrt(1 - explained) * random.Normal());
    }

    /// <summary>No monsters: scores end at 2.5 SD.</summary>
    private static double Within(double score) => Math.Clamp(score, -2.5, 2.5);
}
