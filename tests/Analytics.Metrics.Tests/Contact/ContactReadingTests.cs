using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

public class ContactReadingTests
{
    private static readonly FrameClock Rate240 = FrameClock.FromRate(Frequency.FromHertz(240));

    [Fact]
    public void A_good_reading_has_no_fault() => Assert.Null(Reading(100, 200).Fault(Rate240));

    [Fact]
    public void Contact_before_first_movement_is_named_with_both_frames()
        => Assert.Equal("contact at frame 100 comes before first movement at frame 120; check whether the two frames were swapped", Reading(120, 100).Fault(Rate240));

    [Fact]
    public void Both_events_at_one_frame_is_a_fault()
        => Assert.Equal("contact and first movement are both at frame 120; a run into contact takes many frames, so read both events again", Reading(120, 120).Fault(Rate240));

    [Fact]
    public void A_frame_without_a_time_stamp_is_a_fault()
        => Assert.Equal("contact is at frame 14; the time stamps cover frames 10 to 13",
            Reading(10, 14).Fault(FrameClock.FromTimeStamps([0, 0.1, 0.2, 0.3], 10)));

    [Theory]
    [InlineData(-1, "first movement is at row -1 of the picture; rows count from 0 at the top")]
    [InlineData(1081, "first movement is at row 1081 of the picture, which has 1080 rows")]
    public void A_row_outside_the_picture_is_a_fault(double row, string fault)
        => Assert.Equal(fault, new ContactReading(1, new(1, row), new(2, 5)).Fault(Rate240, new(Duration.FromMilliseconds(16), 1080)));

    [Fact]
    public void Readings_count_from_1() => Assert.Equal("the number of a reading must be 1 or more; got 0", (Reading(1, 2) with { Number = 0 }).Fault(Rate240));

    [Fact]
    public void A_window_must_end_after_it_begins()
        => Assert.Contains("a target window must end after it begins at 0.4 s; got 0.3 s.", Assert.Throws<ArgumentOutOfRangeException>(
            () => new TargetWindow(Duration.FromSeconds(0.4), Duration.FromSeconds(0.3))).Message, StringComparison.Ordinal);

    [Fact]
    public void The_usual_window_prints_its_limits() => Assert.Equal("0.40 to 0.45 s", TargetWindow.Usual.ToString());

    [Fact]
    public void A_row_is_exposed_after_its_share_of_the_read_out()
        => Assert.Equal(16.0 * 800 / 1080, new RollingShutter(Duration.FromMilliseconds(16), 1080).DelayAt(800).Milliseconds, 1e-12);

    [Fact]
    public void The_other_party_may_be_a_bag_an_athlete_or_not_noted()
    {
        Assert.Equal("bag", ContactParty.Bag.ToString());
        Assert.Equal("p07", ContactParty.Athlete("p07").ToString());
        Assert.Equal("not noted", ContactParty.NotNoted.ToString());
        Assert.Throws<ArgumentException>(() => ContactParty.Athlete(" "));
    }

    private static ContactReading Reading(int first, int contact) => new(1, new(first), new(contact));
}
