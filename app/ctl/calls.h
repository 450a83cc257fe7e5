// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calls of crownringctl: what each is asked, and its doing. Each answers with an exit code (`Exit`).

#include "ctl/parts/paper_output.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace crownring::ctl {

struct Common;

struct PostOptions {
    std::string file;
};
int run(const PostOptions& options, const Common& common);

struct AdoptOptions {
    std::string file;
    std::vector<std::string> balloons;
    std::vector<std::string> items;
    bool all = false;
    std::string on;
    std::string by;
};
int run(const AdoptOptions& options, const Common& common);

struct DueOptions {
    std::string on;
    std::string balloon;
    std::vector<std::string> items;
    std::size_t most = 60;
    bool outOfService = false;         ///< what is, too, as if it were in service
    std::vector<std::string> supposed; ///< flights, "REG:MINUTES:DATE"
    bool json = false;
};
int run(const DueOptions& options, const Common& common);

struct ForecastOptions {
    std::string on; ///< the last day that is known; empty: today, or the day before `from` where that is earlier
    std::string from;
    std::string to;
    std::string balloon;
    std::string item;
    std::vector<std::string> plans; ///< "FIRST..LAST=TIMES", "FIRST..LAST=N/week"
    std::uint64_t seed = 0;         ///< of nothing: all is computed
    bool json = false;
};
int run(const ForecastOptions& options, const Common& common);

/// So many days, today among them, are told where no last one is named.
inline constexpr int daysOfAgenda = 14;
struct AgendaOptions {
    std::string on;
    std::string to;
    bool json = false;
};
int run(const AgendaOptions& options, const Common& common);

/// The letter to a station about a visit that is planned.
struct LetterOptions {
    std::string visit; ///< the entry that plans it
    std::string on;
    std::string out; ///< ".pdf", ".txt", ".json"; empty: as text to standard output
    std::string paper = "a4";
    bool force = false;
};
int run(const LetterOptions& options, const Common& common);

struct PlanOptions {
    std::string stations;
    std::string pins;
    std::string from; ///< empty: today
    int months = 24;
    double risk = 0.05;
    bool withoutPlanned = false; ///< visits that the record plans hold no place
    std::uint64_t seed = 0;      ///< of nothing: all is computed
    bool json = false;
};
int run(const PlanOptions& options, const Common& common);

struct CalendarOptions {
    std::string on;
    std::string out;
    std::string balloon;
    int months = 24;
    std::string paper = "a4";
    bool force = false;
    bool withoutFabric = false;
};
int run(const CalendarOptions& options, const Common& common);

struct BalloonsOptions {
    std::string on;
    std::string balloon;
    bool outOfService = false; ///< those too, as if they were in service
    bool json = false;
};
int run(const BalloonsOptions& options, const Common& common);

struct ClockOptions {
    std::string item;
    std::string on;
    bool json = false;
};
int run(const ClockOptions& options, const Common& common);

struct RigUpOptions {
    std::vector<std::string> kit;
    std::string on;
    std::int64_t minutes = 0;
    bool positioning = false;
    bool checkFlight = false;
    bool json = false;
};
int run(const RigUpOptions& options, const Common& common);

struct VerifyOptions {
    std::vector<std::string> expect; ///< WRITER:SEQUENCE:HASH
    std::string expectFrom;          ///< a file with one a line
    bool json = false;
};
int run(const VerifyOptions& options, const Common& common);

struct ImportOptions {
    std::string file;
    std::string balloon;
    std::string dateOrder;
    std::string duration;
    std::string fuel;
    std::string load;
    bool utc = false;
    bool accept = false;
    bool skipBad = false;
    bool json = false;
};
int run(const ImportOptions& options, const Common& common);

struct InspectionListOptions {
    std::string on;
    bool json = false;
};
int run(const InspectionListOptions& options, const Common& common);

struct InspectionShowOptions {
    std::string inspection;
    std::string on;
    std::string csv; ///< "lines" or "readings"
    bool json = false;
};
int run(const InspectionShowOptions& options, const Common& common);

struct InspectionPrintOptions {
    std::string inspection;
    std::string on;
    std::string to;
    std::vector<std::string> what; ///< empty or "all": all that apply
    std::string paper = "a4";      ///< or "letter"
    bool force = false;            ///< a file that is there is replaced
};
int run(const InspectionPrintOptions& options, const Common& common);

struct InspectionOpenOptions {
    std::string visit;
    std::string letter; ///< a file that came beside a letter; empty: none
    std::string balloon;
    std::vector<std::string> items;
    std::vector<std::string> work; ///< "ITEM=REQUIREMENT"; empty: what is proposed
    bool nothing = false;          ///< no work but what the visit itself accomplishes
    std::string order;
    std::string by;
    std::string on;
};
int run(const InspectionOpenOptions& options, const Common& common);

struct InspectionSignOptions {
    std::string inspection;
    std::string by;
    std::string capacity;
    std::string outcome = "released";
    std::vector<std::string> data; ///< used, with revision
    std::string limitations;
    std::vector<std::string> outstanding; ///< optional lines that are to be done
    std::string until;                    ///< of a release after incomplete maintenance: the last good day
    std::int64_t minutes = 0;             ///< that it may be flown in all; 0: not bounded
    std::int64_t flights = 0;             ///< the same of flights
    std::string on;
    std::string time;     ///< of that day, UTC; may be empty
    std::string codeFile; ///< with the signatory's code; "-": standard input; empty: none
    bool draft = false;
};
int run(const InspectionSignOptions& options, const Common& common);

struct InspectionApproveOptions {
    std::string inspection;
    std::string by;
    std::string capacity; ///< "inspection-authorization" …
    std::string on;
    std::string time;     ///< of that day, UTC; may be empty
    std::string codeFile; ///< as in `InspectionSignOptions`
};
int run(const InspectionApproveOptions& options, const Common& common);

struct InspectionRevokeOptions {
    std::string inspection;
    std::string by;
    std::string reason;
    std::string on;
    std::string time;     ///< of that day, UTC; may be empty
    std::string codeFile; ///< as in `InspectionSignOptions`
};
int run(const InspectionRevokeOptions& options, const Common& common);

struct ReviewListOptions {
    std::string on;
    std::string balloon; ///< empty: all
    bool json = false;
};
int run(const ReviewListOptions& options, const Common& common);

struct ReviewShowOptions {
    std::string review; ///< the number of its certificate, or the id of its entry
    std::string on;
    std::string to;           ///< a PDF file, instead of an answer
    std::string paper = "a4"; ///< or "letter"
    bool force = false;       ///< a file that is there is replaced
    bool json = false;
};
int run(const ReviewShowOptions& options, const Common& common);

struct ReviewSignOptions {
    std::string balloon;
    std::string act = "review"; ///< or "extension", "recommendation"
    std::string form;
    std::string certificate;
    std::string expires; ///< as printed; empty: what the rule gives
    std::string by;
    std::string capacity;
    std::string findings;
    std::vector<std::string> photographs; ///< files with photographs or scans of the certificate
    std::string inspection;
    std::string on;
    std::string time;     ///< of that day, UTC; may be empty
    std::string codeFile; ///< as in `InspectionSignOptions`
};
int run(const ReviewSignOptions& options, const Common& common);

struct ReviewVoidOptions {
    std::string review; ///< the number of its certificate, or the id of its entry
    std::string by;
    std::string reason;
    std::string on;
    std::string codeFile; ///< as in `InspectionSignOptions`
};
int run(const ReviewVoidOptions& options, const Common& common);

struct SignatoryCodeOptions {
    std::string name;
    std::string codeFile;   ///< with the new one
    std::string beforeFile; ///< with the one that it replaces
    std::string by;         ///< who sets it in the name of another
    std::string byCodeFile; ///< with his own
    std::string reason;     ///< why he does
    std::string on;
    std::string time; ///< of that day, UTC; may be empty
};
int run(const SignatoryCodeOptions& options, const Common& common);

struct SignatoryListOptions {
    bool json = false;
};
int run(const SignatoryListOptions& options, const Common& common);

struct TextListOptions {
    std::string on;
    bool json = false;
};
int run(const TextListOptions& options, const Common& common);

struct TextShowOptions {
    std::string text; ///< or a checklist
    std::string revision;
    std::string on;
    bool json = false;
};
int run(const TextShowOptions& options, const Common& common);

struct TextAdoptOptions {
    std::string text; ///< or "all"
    std::string organisation;
    std::string body; ///< a file with an own wording; empty: as it ships
    std::string revision;
    std::string title;
    std::string source;
    std::string by;
    std::string on;
};
int run(const TextAdoptOptions& options, const Common& common);

struct TextConfirmOptions {
    std::string text; ///< or a checklist
    std::string revision;
    std::string digest; ///< of what was read; empty: of what is in use
    std::string against;
    std::string by;
    std::string capacity;
    std::string on;
};
int run(const TextConfirmOptions& options, const Common& common);

struct FabricForecastOptions {
    std::string envelope;
    std::string quantity; ///< empty: the first that its manual bounds
    std::string on;
    std::uint64_t seed = 1;
    bool json = false;
};
int run(const FabricForecastOptions& options, const Common& common);

struct FabricLotsOptions {
    std::string quantity; ///< empty: the first that any manual bounds
    std::string on;
    std::uint64_t seed = 1;
    bool json = false;
};
int run(const FabricLotsOptions& options, const Common& common);

struct FabricScoreOptions {
    std::string quantity; ///< empty: the first that any manual bounds
    std::string on;
    std::uint64_t seed = 1;
    bool json = false;
};
int run(const FabricScoreOptions& options, const Common& common);

struct FabricFitOptions {
    std::string readings;
    double limit = 0;
    std::uint64_t seed = 1;
    bool json = false;
};
int run(const FabricFitOptions& options, const Common& common);

struct WearOptions {
    std::string item;
    std::string on;
    bool json = false;
};
int run(const WearOptions& options, const Common& common);

struct EventsOptions {
    std::string on;
    std::string balloon; ///< empty: all
    int days = 365;      ///< back from the day
    PaperAsked paper{};  ///< of one balloon
    bool json = false;
};
int run(const EventsOptions& options, const Common& common);

struct FuelOptions {
    std::string balloon;
    std::string on;
    bool json = false;
};
int run(const FuelOptions& options, const Common& common);

struct DirectivesOptions {
    std::string on;
    std::string balloon;
    bool json = false;
    PaperAsked paper; ///< the status list of the balloon
};
int run(const DirectivesOptions& options, const Common& common);

struct JournalOptions {
    std::string text;
    std::string kind;
    int most = 100;
    bool json = false;
};
int run(const JournalOptions& options, const Common& common);

struct BackupOptions {
    std::string file;
    bool force = false; ///< an older copy that is there is replaced
};
int run(const BackupOptions& options, const Common& common);

struct RebuildOptions {};
int run(const RebuildOptions& options, const Common& common);

}
