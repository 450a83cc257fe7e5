// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/log_heading.h"

#include "exchange/text/plain_text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace crownring {

namespace {

struct KnownNames {
    LogColumn column;
    std::string_view name;      ///< ours
    std::string_view sure;      ///< separated by | and folded
    std::string_view uncertain; ///< may mean this when nothing surer is there
};

constexpr std::array<KnownNames, 19> known = {{
    {LogColumn::Balloon, "balloon",
     "registration|reg|aircraft registration|balloon registration|tail "
     "number|ident|kennzeichen|kennung|ballonkennzeichen|"
     "luftfahrzeugkennzeichen|immatriculation|immat|matricula|registro",
     "balloon|aircraft|ballon|luftfahrzeug|montgolfiere|aerostat|aeronef|globo|aerostato|aeronave"},
    {LogColumn::Date, "date",
     "date|flight date|date of flight|day|on|datum|fahrtdatum|flugdatum|tag|date du vol|date de vol|jour|fecha|"
     "fecha de vuelo|fecha del vuelo|dia",
     ""},
    {LogColumn::TakeOff, "take-off",
     "take off|takeoff|take off time|takeoff time|time of take off|launch time|lift off|liftoff|departure time|start "
     "time|"
     "startzeit|abfahrtszeit|abhebezeit|decollage|heure de decollage|heure decollage|despegue|hora de despegue|"
     "hora despegue",
     "start|launch|departure|off|depart|salida|time"},
    {LogColumn::Landing, "landing",
     "landing time|time of landing|touchdown|touchdown time|arrival time|end time|landezeit|landung zeit|"
     "heure d atterrissage|heure atterrissage|heure de l atterrissage|hora de aterrizaje|hora aterrizaje",
     "landing|arrival|end|landung|ende|atterrissage|aterrizaje|llegada"},
    {LogColumn::Duration, "duration",
     "duration|flight duration|time aloft|flight time|time in service|airborne|airborne time|flying "
     "time|hours|minutes|minutes aloft|hours aloft|"
     "dauer|fahrtdauer|fahrdauer|fahrzeit|fahrtzeit|flugzeit|flugdauer|stunden|minuten|duree|duree du vol|duree de vol|"
     "temps de vol|heures de vol|heures|duracion|duracion del vuelo|tiempo de vuelo|horas de vuelo|horas|minutos",
     "aloft|total time|time flown|min|h|hrs"},
    {LogColumn::Landings, "landings",
     "landings|number of landings|no of landings|nr of landings|landings count|ldg|ldgs|landungen|anzahl landungen|"
     "anzahl der landungen|atterrissages|nombre d atterrissages|nb atterrissages|aterrizajes|numero de aterrizajes|"
     "no de aterrizajes",
     ""},
    {LogColumn::Inflations, "inflations",
     "inflations|number of inflations|no of inflations|aufrustungen|fullungen|anzahl fullungen|anzahl aufrustungen|"
     "gonflages|nombre de gonflages|nb gonflages|inflados|numero de inflados",
     ""},
    {LogColumn::MaxTemperature, "max-temp",
     "max temp|max temperature|maximum temperature|maximum temp|max envelope temperature|max envelope temp|"
     "envelope temperature|envelope temp|top temperature|hochsttemperatur|max temperatur|maximale temperatur|"
     "hullentemperatur|max hullentemperatur|temperature max|temperature maximale|temperatura max|temperatura maxima",
     "temp|temperature|temperatur|temperatura"},
    {LogColumn::FuelUsed, "fuel-used",
     "fuel used|fuel burnt|fuel burned|fuel burn|fuel consumed|fuel consumption|propane used|gas used|fuel kg|fuel l|"
     "verbrauch|gasverbrauch|kraftstoffverbrauch|brennstoffverbrauch|treibstoffverbrauch|consommation|"
     "consommation de gaz|carburant consomme|gaz consomme|consumo|consumo de gas|combustible consumido",
     ""},
    {LogColumn::Outside, "outside-temp",
     "outside temperature|outside temp|outside air temperature|oat|ambient temperature|air temperature|"
     "aussentemperatur|lufttemperatur|temperature exterieure|temperature de l air|"
     "temperatura exterior|temperatura del aire",
     ""},
    {LogColumn::Load, "load",
     "load on board|payload|zuladung|beladung|charge utile|charge embarquee|carga util|carga a bordo", "load"},
    {LogColumn::Tethered, "tethered",
     "tethered|tether|tethered flight|gefesselt|fesselfahrt|fesselaufstieg|captif|vol captif|cautivo|vuelo cautivo",
     ""},
    {LogColumn::Envelope, "envelope", "envelope|envelope no|envelope serial|hulle|enveloppe|vela", ""},
    {LogColumn::Basket, "basket", "basket|basket no|basket serial|korb|nacelle|cesta|barquilla", ""},
    {LogColumn::Burner, "burner", "burner|burner no|burner serial|brenner|bruleur|quemador", ""},
    {LogColumn::Cylinders, "cylinders",
     "cylinders|cylinder|tanks|fuel cylinders|flaschen|gasflaschen|zylinder|bouteilles|cylindres|bombonas|cilindros",
     ""},
    {LogColumn::Kit, "kit", "kit|kit flown|items|equipment|ausrustung|materiel|equipo", ""},
    {LogColumn::By, "by",
     "pilot|pic|pilot in command|pilot name|name of pilot|pilotin|verantwortlicher pilot|pilote|nom du pilote|"
     "commandant de bord|piloto|piloto al mando|commander",
     "by|entered by|logged by|captain|commandant|von|par|por"},
    {LogColumn::Note, "note",
     "remark|remarks|note|notes|comment|comments|bemerkung|bemerkungen|notiz|notizen|anmerkung|anmerkungen|kommentar|"
     "remarque|remarques|observation|observations|commentaire|commentaires|observacion|observaciones|nota|notas|"
     "comentario|comentarios",
     ""},
}};

bool isAmong(std::string_view word, std::string_view list) {
    while (!list.empty()) {
        const auto end = list.find('|');
        if (list.substr(0, end) == word)
            return true;
        list = end == std::string_view::npos ? std::string_view{} : list.substr(end + 1);
    }
    return false;
}

constexpr std::string_view utcWords = "utc|z|gmt|zulu";
/// Words that say nothing which matters here.
constexpr std::string_view idleWords = "in|local|lt|ortszeit|lokal|lokalzeit|locale|hora local|heure locale";
constexpr std::string_view minuteWords = "min|mins|minute|minutes|minuten|minutos|mn|mm|m";
constexpr std::string_view hourWords = "h|hr|hrs|hour|hours|std|stunden|heures|horas|decimal|dezimal|decimal hours";
constexpr std::string_view clockWords = "h mm|hh mm|h min|hh mm ss|h mm ss|std min|hmm|hhmm";
constexpr std::string_view celsiusWords = "c|celsius|deg c|grad c";
constexpr std::string_view fahrenheitWords = "f|fahrenheit|deg f";
constexpr std::string_view dayFirstWords =
    "dd mm yyyy|tt mm jjjj|jj mm aaaa|dd mm aaaa|dd mm yy|tt mm jj|d m y|d m yyyy|t m j";
constexpr std::string_view monthFirstWords = "mm dd yyyy|mm dd yy|m d yyyy|m d y";
constexpr std::string_view yearFirstWords = "yyyy mm dd|jjjj mm tt|aaaa mm jj|aaaa mm dd|y m d|iso";

/// Takes what `hint` says into the heading; false when it says nothing that is known.
bool takeHint(LogHeading& heading, std::string_view hint, std::string_view raw) {
    if (isAmong(hint, utcWords))
        heading.utc = true;
    else if (isAmong(hint, clockWords))
        heading.durationUnit =
            raw.find('.') != std::string_view::npos ? std::optional(BareDuration::HoursPointMinutes) : std::nullopt;
    else if (isAmong(hint, minuteWords))
        heading.durationUnit = BareDuration::Minutes;
    else if (isAmong(hint, hourWords))
        heading.durationUnit = BareDuration::Hours;
    else if (isAmong(hint, celsiusWords))
        heading.temperatureUnit = TemperatureUnit::Celsius;
    else if (isAmong(hint, fahrenheitWords))
        heading.temperatureUnit = TemperatureUnit::Fahrenheit;
    else if (const auto unit = amountUnitNamed(hint))
        heading.amountUnit = unit;
    else if (isAmong(hint, dayFirstWords))
        heading.dateOrder = DateOrder::DayMonthYear;
    else if (isAmong(hint, monthFirstWords))
        heading.dateOrder = DateOrder::MonthDayYear;
    else if (isAmong(hint, yearFirstWords))
        heading.dateOrder = DateOrder::YearMonthDay;
    else
        return isAmong(hint, idleWords);
    return true;
}

/// "Duration (h)" as "Duration " and "h".
std::pair<std::string, std::string> withoutBrackets(std::string_view text) {
    const auto open = text.find_first_of("([");
    if (open == std::string_view::npos)
        return {std::string(text), {}};
    const auto close = std::min(text.find_first_of(")]", open), text.size());
    auto name = std::string(text.substr(0, open)) + " ";
    if (close < text.size())
        name += text.substr(close + 1);
    return {name, std::string(text.substr(open + 1, close - open - 1))};
}

bool name(LogHeading& heading, std::string_view folded) {
    for (const auto& each : known) {
        const bool sure = isAmong(folded, each.sure);
        if (!sure && !isAmong(folded, each.uncertain) && folded != each.name)
            continue;
        heading.meaning = each.column;
        heading.sure = sure;
        return true;
    }
    return false;
}

/// Takes every word of `hint`, or none.
bool takeHints(LogHeading& heading, std::string_view hint, std::string_view raw) {
    if (hint.empty() || takeHint(heading, hint, raw))
        return true;
    const auto before = heading;
    while (!hint.empty()) {
        const auto end = hint.find(' ');
        if (!takeHint(heading, hint.substr(0, end), raw)) {
            heading = before;
            return false;
        }
        hint = end == std::string_view::npos ? std::string_view{} : hint.substr(end + 1);
    }
    return true;
}

/// The longest known name at the beginning whose rest are units.
void nameWithUnits(LogHeading& heading, std::string_view folded, std::string_view raw) {
    for (auto end = folded.size(); end != std::string_view::npos && end > 0; end = folded.rfind(' ', end - 1)) {
        const auto rest = end == folded.size() ? std::string_view{} : folded.substr(end + 1);
        auto named = heading;
        if (name(named, folded.substr(0, end)) && takeHints(named, rest, raw)) {
            heading = std::move(named);
            return;
        }
    }
}

}

const std::vector<LogColumn>& logColumns() {
    static const auto columns = [] {
        std::vector<LogColumn> all;
        for (const auto& each : known)
            all.push_back(each.column);
        return all;
    }();
    return columns;
}

std::string_view logColumnName(LogColumn column) { return known[static_cast<std::size_t>(column)].name; }

Term termOf(LogColumn column) { return {Term::Of::LogColumn, std::string(logColumnName(column))}; }

std::optional<LogColumn> logColumnFrom(std::string_view name) {
    for (const auto& each : known)
        if (each.name == name)
            return each.column;
    return std::nullopt;
}

bool isOfFuel(std::string_view heading) {
    const auto words = folded(withoutBrackets(heading).first);
    return isAmong(words,
                   "fuel|propane|gas|gas kg|gas l|gal|fuel gal|brennstoff|propan|gaz|carburant|combustible|propano");
}

LogHeading headingFrom(std::string_view text) {
    LogHeading heading;
    heading.text = std::string(trimmed(text));
    const auto [name, hint] = withoutBrackets(text);
    nameWithUnits(heading, folded(name), text);
    takeHints(heading, folded(hint), hint);
    const auto words = folded(name);
    if ((heading.meaning == LogColumn::FuelUsed || heading.meaning == LogColumn::Load) && !heading.amountUnit)
        heading.amountUnit = amountUnitNamed(std::string_view(words).substr(words.rfind(' ') + 1)); // "fuel_kg"
    if (heading.meaning == LogColumn::Duration && !heading.durationUnit) {
        if (isAmong(words, "minutes|minuten|minutos|min"))
            heading.durationUnit = BareDuration::Minutes;
        else if (isAmong(words, "hours|stunden|heures|horas|h|hrs"))
            heading.durationUnit = BareDuration::Hours;
    }
    return heading;
}

std::string understoodHeadings() {
    std::string all;
    for (const auto& each : known) {
        const auto first = each.sure.substr(0, each.sure.find('|'));
        all += (all.empty() ? "" : ", ") + std::string(each.name);
        if (first != each.name)
            all += " (" + std::string(first) + ")";
    }
    return all;
}

}
