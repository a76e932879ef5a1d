#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/units.hpp"

namespace yardworth {

enum class Gender { men, women };

// Classes of golfer. scratch and bogey are those of course rating; the others are ranges of Handicap Index. all_bands
// is by skill, best first: by typical_handicap_index.
enum class Band { tour, scratch, below_6, from_6_to_12, from_13_to_20, from_21, bogey };
inline constexpr std::array<Band, 7> all_bands = {Band::tour,          Band::scratch, Band::below_6, Band::from_6_to_12,
                                                  Band::from_13_to_20, Band::bogey,   Band::from_21};

// As files and reports write them: "tour", "scratch", "below 6", "6-12", "13-20", "bogey", "21 and over"; "men",
// "women".
std::string_view name(Band band);
std::string_view name(Gender gender);
std::optional<Band> band_named(std::string_view text);
std::optional<Gender> gender_named(std::string_view text);

// The band that a Handicap Index falls in (below 6, 6-12, 13-20, 21 and over; limits at 6, 12.5 and 20.5).
Band band_of(double handicap_index);
// The Handicap Index that stands for a band where one number is needed.
double typical_handicap_index(Band band, Gender gender);

// The lies a ball can be played from. On the tee the ball is teed up; recovery is among trees.
enum class Lie { tee, fairway, rough, bunker, recovery, green };
inline constexpr std::array<Lie, 6> all_lies = {Lie::tee,    Lie::fairway,  Lie::rough,
                                                Lie::bunker, Lie::recovery, Lie::green};
std::string_view name(Lie lie);

enum class ClubKind { driver, wood, hybrid, iron, wedge, other };

// Below this share of its full carry a swing is no longer one that a golfer has measured (common practice, no source).
inline constexpr double half_swing = 0.5;

// A club as the player hits it from a good lie with a full swing. All of it is known: what a file leaves out has been
// filled from the player's skill.
struct Club {
  std::string name;
  ClubKind kind = ClubKind::other;
  int number = 0;                 // 5 of a 5-iron; 0 where it has none
  double carry_yd = 0.0;          // mean carry of a solid strike, > 0
  double roll_yd = 0.0;           // on a fairway of normal firmness, >= 0
  double carry_sd_yd = 0.0;       // of solid strikes, > 0
  double direction_sd_rad = 0.0;  // of solid strikes, > 0
  double poor_strike = 0.0;       // probability, in [0, 1)
  // Where solid strikes start on average, right of where they are aimed.
  double direction_mean_rad = 0.0;
  // What is left of carry_sd_yd however short the shot; in [0, carry_sd_yd].
  double carry_sd_floor_yd = 0.0;
  double half_swing_yd = 0.0;  // a shot that carries less is less sure (played_down)
  double place = 0.0;          // place_in_bag, in [0, 1]; not moved by lengthen
};

// What a lie does to a shot: factors on carry and on the two spreads, and poor strikes added.
struct LieEffect {
  double carry_factor = 1.0;         // in (0, 1]
  double carry_sd_factor = 1.0;      // on the spread of carry, >= 1
  double direction_sd_factor = 1.0;  // >= 1
  double poor_strike_added = 0.0;    // >= 0
};

// A stroke on the green: how widely it starts off the line that would hole it, misread included, and how unevenly it is
// struck, as a share of the length it was meant to roll.
struct PuttingSkill {
  double direction_sd_rad = 0.0;
  double distance_sd_share = 0.0;
};

// A stroke at the hole from a lie inside the short game. The spread of how far it goes is spread_floor_yd +
// spread_share x distance.
struct Touch {
  double spread_floor_yd = 0.0;
  double spread_share = 0.0;
  double poor_strike = 0.0;  // probability of a stroke that stays well short or goes well past
};

struct ShortGameSkill {
  Touch fairway, rough, bunker, recovery;
};

// What is not in a club table: the golfer's typical spreads, and what lies do. By Handicap Index and gender.
struct Skill {
  double driver_carry_yd = 0.0;
  double driver_roll_yd = 0.0;
  double carry_sd_floor_yd = 0.0;  // spread of carry, solid strikes: carry_sd_floor_yd + carry_sd_share x carry
  double carry_sd_share = 0.0;
  // Spread of direction: straight lines over the places in the bag, with a bend at the hybrid.
  double driver_direction_sd_rad = 0.0;
  double hybrid_direction_sd_rad = 0.0;  // of the longest club that is no full wood
  double wedge_direction_sd_rad = 0.0;
  double driver_poor_strike = 0.0;
  double wedge_poor_strike = 0.0;
  LieEffect fairway;  // of a club as long as the driver, against the same from a tee; others by their place in the bag
  LieEffect rough;
  LieEffect bunker;
  LieEffect recovery;
  ShortGameSkill short_game;
  PuttingSkill putting;
  double direction_mean_rad = 0.0;  // as Club::direction_mean_rad, of clubs of which nothing else is known
};

// The skill of a Handicap Index (tour is about +6, written -6), interpolated between the bands.
Skill skill_of(double handicap_index, Gender gender);
Skill skill_of(Band band, Gender gender);

// A strike that a file gives in place of a club's carry. It tells where the carry comes from; what is simulated are the
// clubs.
struct StruckClub {
  struct Number {
    std::string key;  // as `delivery` has it, with its unit: "attack_deg"
    double value = 0.0;
    bool typical = false;  // of the club, since the file left it out
  };
  std::string club;             // its name
  std::vector<Number> numbers;  // all of a delivery: club head speed, attack, dynamic loft, path, face
};

// A golfer with a club table, ready to be simulated.
struct Player {
  std::string label;
  std::optional<double> handicap_index;  // plus handicaps are negative
  Band band = Band::from_13_to_20;
  Gender gender = Gender::men;
  Units units = Units::yards;
  std::vector<Club> clubs;  // longest carry first, one driver at most
  Skill skill;
  std::vector<StruckClub> strikes;  // of the clubs whose carry was worked out, in their order
};

// Which clubs miss to one side on average, and how far, in the order of the bag; one without a name where all miss
// alike, none where none does.
struct SideMiss {
  std::string club;
  double direction_mean_rad = 0.0;  // right positive
};
std::vector<SideMiss> side_misses(const Player& player);

// A standard bag for a skill: driver, woods, irons and wedges at this golfer's gaps. For bands and tests.
Player standard_player(Band band, Gender gender);
// The same bag in the hands of any skill; label, index and band are the caller's.
Player standard_player(const Skill& skill, Gender gender);

// The same of a golfer whose driver carries so far, the other clubs in proportion: as if a file gave all their carries.
Player standard_player(const Skill& skill, Gender gender, double driver_carry_yd);

// A golfer of a club's list, of whom no more is known.
struct Member {
  std::string label;
  double handicap_index = 0.0;  // plus handicaps are negative
  Gender gender = Gender::men;
  std::optional<double> driver_carry_yd;  // nothing: typical of the index
};

// The club whose added carry is what "--irons N" means: the 7-iron, or the iron nearest to it in number, or, without
// irons, the club below the driver whose carry is nearest to that of a 7-iron of such a bag. Nothing with a driver
// only.
std::optional<std::size_t> reference_iron(const Player& player);

// The same golfer with longer clubs. driver_yd is added to the driver's carry; every club below gains in proportion to
// its carry so that the reference iron gains irons_yd. Roll stays; the spread of a shot of so many yards stays, and so
// does what a lie does to a club.
Player lengthen(const Player& player, double driver_yd, double irons_yd);
// A club with so much more carry, likewise.
Club lengthen(const Club& club, double carry_yd);

}  // namespace yardworth
