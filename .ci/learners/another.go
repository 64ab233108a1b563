package main

import (
	"math"
	"math/rand/v2"
	"slices"
)

// A mind is a learner of another kind than learner: it has no switch from not known to known. Each use of a skill leaves a trace, a skill is as
// strong as its traces together, and strength makes it likely, never sure, that it is recalled. The parts, each with where it is from (all
// cited from memory; what is marked as a range is our own guess at what is plausible, wide on purpose):
//
//   - Traces that fade by a power of time, the faster the stronger the skill was when it was used, so that spaced practice lasts; time between
//     sittings runs slower; recall a logistic of strength: Pavlik and Anderson, "Practice and forgetting effects on vocabulary memory: an
//     activation-based model of the spacing effect", 2005, with its numbers. Its form is that of Anderson and Schooler, "Reflections of the
//     environment in memory", 1991.
//   - Strength that grows as the logarithm of practice, thus smoothly: Newell and Rosenbloom, "Mechanisms of skill acquisition and the law of
//     practice", 1981.
//   - Learners who differ much in what they bring and less in pace: Koedinger, Carvalho, Liu and McLaughlin, "An astonishing regularity in
//     student learning rate", 2023. A slow tenth is added all the same.
//   - What is recalled leaves more than what is told: Roediger and Karpicke, "Test-enhanced learning", 2006.
//   - Of many new things at once few are taken in: Sweller, "Cognitive load during problem solving", 1988; Cowan, "The magical number 4 in
//     short-term memory", 2001.
//   - A strong neighbour comes in place of what was sought: partial matching of Anderson and Lebiere, "The Atomic Components of Thought", 1998;
//     Luchins, "Mechanization in problem solving", 1942; Underwood, "Interference and forgetting", 1957.
//   - Guesses and slips: Corbett and Anderson, "Knowledge tracing: modeling the acquisition of procedural knowledge", 1995. Slips come in runs and
//     with carelessness: San Pedro, Baker and Rodrigo, "Detecting carelessness through contextual estimation of slip probabilities among students
//     using an intelligent tutor for mathematics", 2011; Reason, "Human Error", 1990.
//   - Slips grow with time on the work: Mackworth, "The breakdown of vigilance during prolonged visual search", 1948; Ackerman and Kanfer, "Test
//     length and cognitive fatigue", 2009 (who find little of it in the mean, and much difference between people).
type mind struct {
	r *rand.Rand
	person
	traces    map[string][]trace
	knack     map[string]float64 // of this learner for this skill, added to its strength
	day, done int                // the sitting, and the steps done in it
	form      float64            // of the day, added to all strength
	flustered bool               // the last step had a slip
}

// A trace is what one use of a skill leaves.
type trace struct{ at, fades, weight float64 }

// The numbers of Pavlik and Anderson, 2005: time is in seconds, and of the time between sittings a fortieth counts.
const (
	fadeBase     = 0.177 // a, the decay of a first trace
	fadeStrength = 0.217 // c, what strength adds to it
	threshold    = -0.704
	noise        = 0.255
	dayTime      = 0.025 * 24 * 60 * 60
	stepTime     = 10 * 60.0 / 12 // about a dozen in ten minutes
)

// takenIn is how many things that were missed at one step are attended to whole: about half of the four of Cowan, the work takes the rest.
const takenIn = 2

// clock tells the time in a mind.
func clock(day, done int) float64 { return float64(day)*dayTime + float64(done)*stepTime }

// strength is the activation of a skill, minus infinity if it was never used.
func (m *mind) strength(skill string, at float64) float64 {
	sum := 0.0
	for _, t := range m.traces[skill] {
		sum += t.weight * math.Pow(math.Max(at-t.at, stepTime), -t.fades)
	}
	return m.knack[skill] + math.Log(sum)
}

// use leaves a trace of a skill.
func (m *mind) use(skill string, at, weight float64) {
	fades := m.fades + fadeStrength*math.Exp(m.strength(skill, at))
	m.traces[skill] = append(m.traces[skill], trace{at, fades, weight})
}

// A rival is what may come to mind when a skill is sought, with its odds; nothing is one of them.
type rival struct {
	skill string
	odds  float64
}

// rivals lists the skill itself first, then nothing, then its neighbours. The extra is added to all strength.
func (m *mind) rivals(skill string, at, extra float64) []rival {
	odds := func(strength float64) float64 { return math.Exp((strength + extra - threshold) / noise) }
	list := []rival{{skill, odds(m.strength(skill, at))}, {"", 1}}
	for _, n := range neighbours[skill] {
		list = append(list, rival{n, odds(m.strength(n, at) - m.tellsApart)})
	}
	return list
}

func total(list []rival) (sum float64) {
	for _, x := range list {
		sum += x.odds
	}
	return sum
}

// recall is the chance that the skill itself comes to mind at the beginning of a sitting on an ordinary day.
func (m *mind) recall(skill string, day int) float64 {
	list := m.rivals(skill, clock(day, 0), 0)
	return list[0].odds / total(list)
}

// seek draws what comes to mind.
func (m *mind) seek(skill string, at float64) string {
	list := m.rivals(skill, at, m.form)
	left := m.r.Float64() * total(list)
	for _, x := range list {
		if left -= x.odds; left < 0 {
			return x.skill
		}
	}
	return skill
}

// step does one step of a lesson, and tells what went wrong.
func (m *mind) step(skills []string, day int) (missed []string) {
	if day != m.day {
		m.day, m.done, m.form = day, 0, 0.15*m.r.NormFloat64()
	}
	at, tired := clock(day, m.done), 1+m.tires*float64(m.done)
	m.done++
	wrong := m.lapses(skills, tired)
	var lost []string
	for _, s := range skills {
		found := m.seek(s, at)
		if found == s {
			continue
		}
		lost = append(lost, s)
		switch guessed := found == "" && m.r.Float64() < m.guess(s); {
		case guessed:
		case slices.Contains(skills, found) && m.r.Float64() < 0.5: // it looks like a miss of the neighbour
			wrong[found] = true
		default:
			wrong[s] = true
		}
	}
	m.learn(skills, lost, at, tired)
	for _, s := range skills {
		if wrong[s] && !slices.Contains(missed, s) {
			missed = append(missed, s)
		}
	}
	return missed
}

// learn leaves the traces of a step: whole of what was recalled, less of what had to be told or was guessed.
func (m *mind) learn(skills, lost []string, at, tired float64) {
	for _, s := range skills {
		weight := m.pace / tired
		if slices.Contains(lost, s) {
			weight *= m.help * math.Min(1, takenIn/float64(len(lost)))
		}
		m.use(s, at, weight)
	}
}

// lapses draws a slip at a step and what it spoils, one skill for sure and others with it.
func (m *mind) lapses(skills []string, tired float64) map[string]bool {
	chance := m.slips * tired
	if m.flustered {
		chance *= 2
	}
	spoiled := map[string]bool{}
	if m.flustered = m.r.Float64() < math.Min(chance, 0.6); !m.flustered {
		return spoiled
	}
	spoiled[skills[m.r.IntN(len(skills))]] = true
	for _, s := range skills {
		if m.r.Float64() < 0.3 {
			spoiled[s] = true
		}
	}
	return spoiled
}
