// SPDX-License-Identifier: MIT
#include "gui/command/about_plan_cases.h"

namespace tangmark::command {

const std::string_view about_plan_cases = R"(
A CASE is a JSON object of the format "kiln-plan-1"; all numbers are whole: minutes from the plan's
start, degrees C, money in thousandths of a cent. These fields may be left away:

  locked          of the case: firings as in a plan; they stay exactly where they are.
  hands_taken     of the case: [[from, to]]; your hands are then at a firing that ran before.
  baths           of the case: [{"id", "rest_temp", "t_max", "tau_min", "now_temp"}], quench tanks
                  that no quench may take above t_max. Without now_temp a tank begins at rest.
  kiln_state      of a kiln: {"off_temp", "off_at", "free_at"}, how it was left: off at that
                  temperature and minute, empty from free_at. Below zero is before the plan.
  stagger         of a kiln: true where blades for hardening go in one by one, at the intervals at
                  which they will be quenched. Then all soak alike; the hands stay at the door until
                  the last is in, and the first comes out only after that.
  load_mw_min_per_c
                  of a kiln: what each blade in a firing draws beside holding, in milliwatt-minutes
                  for each degree of the firing above the room. It joins the firing's energy before
                  that is rounded.
  previous_end    of a blade: when the operation before its first one ended; its first gap counts.
  bath, bath_rise_mk
                  of a harden operation: the tank, and by how many thousandths of a degree the
                  quench of this blade warms it.

How a tank warms: each blade gives its heat to it at once, at the end of its own quench; between
quenches it falls back towards rest_temp exponentially with the time constant tau_min; it is
stirred. What is judged is the tank just after each quench. Common practice, no source. The shop's
own plan reckons so for every quench bath with volume, upper end of its band and cooling time
constant; what a blade brings is its heat from the hardening temperature down (specific heat of
carbon steel, EN 1993-1-2, from memory), in oil at 1.7 kJ and in water at 4.1 kJ for each litre and
degree. It is an estimate: keep a lid and an extinguisher for burning oil at hand, and heed the
oil's own data sheet and your local rules.

A firing that runs as the plan begins is told by the kiln_state of its kiln, the previous_end of its
blades and the hands_taken of its unloading.

The answer holds the firings, and beside them: objective, parts, lower_bound (no plan costs less),
iterations, and unplaced [{blade, op, rule, why, change}]: the blades that find no place, which rule
stops each (R1 to R16), and the nearest change that would free it, such as another oven or longer
hours.)";

}  // namespace tangmark::command
