using System.Globalization;
using Analytics.Planning.People;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Dose;

/// <summary>Lines of days on which a player trains more than once.</summary>
internal static class DayDose
{
    /// <summary>Ground contacts of a day against the guide for one session: that two sessions share it is our choice, no source.</summary>
    public static IEnumerable<DoseLine> Contacts(PlanPlayer player, IReadOnlyList<PlayerSession> sessions, PlanRules rules)
        => sessions.GroupBy(s => s.Slot.Date).Where(d => d.Skip(1).Any() && d.Sum(Contacts) > 0).OrderBy(d => d.Key)
            .Select(d => new DoseLine
            {
                RuleId = RuleIds.JumpContacts,
                Day = d.Key,
                Subject = "day",
                What = "ground contacts",
                Amount = d.Sum(Contacts),
                Limit = rules.IsOn(RuleIds.JumpContacts) ? ContactLimit.Of(player, rules).Most : null,
                Source = rules[RuleIds.JumpContacts].Source,
                Note = string.Create(CultureInfo.InvariantCulture, $"{d.Count()} sessions held to the guide for one: our choice, no source"),
            });

    private static int Contacts(PlayerSession session) => session.Items.Sum(i => i.Contacts);
}
