// The words that everybody uses most and children know first, to find the one that a slip was meant to be. Taken from our table of
// use (the 1.44^18 most used words that are known in the first grades), with the exception words of England's curriculum.

const WORDS = `
able about accident across act afraid after afternoon again against age ago ahead air alive all almost alone
along already also always and angel animal another answer any anybody anyone anything anyway anywhere apartment
are army around art ask asked asking attack attention autumn away baby back bad bag ball balloon bank bar beat
beautiful because become bed been beer before behind being believe besides best bet better between big bill
birthday bit black blood blow blue boat bob body book born boss both bought box boy boys brain break bring broke
broken brother brought build building buried bus business busy but buy call called calling calls came can cannot
captain car card care careful case cash castle catch caught cause certain certainly chance change changed charge
check chief child children choice city class clean clear climb close clothes club coffee cold college comb come
comes coming company cool could count country course court cousin cover crazy cut cute daddy dance dangerous
dark darling date daughter day days deal dear death decided deep definitely did die died difference different
dinner doctor does dog doing dollars done door down dream dress drink drive driving drop during each early earth
easy eat eight either else end enjoy enough even evening ever every everybody everyone everything evil except
excuse expect explain eye eyes face fact fair fall family far fast fat father fault favor favourite feel feeling
feels feet fell felt few field fight fighting figure figured finally find fine finish finished fire first fish
five fix floor fly folks follow food fool for forget forgive forgot forty forward found four free friend friends
from front fruit full fun funny game garden gave general gentlemen get gets getting girl girls give given giving
glad goes going gold gone good goodbye got grab grammar grass great green ground group guard guess guy guys had
hair half hand handle hands hang happen happened happening happens happy hard has hate have having head hear
heard heart height hello help her here high him himself his history hit hold home honest honey honor hope horse
hospital hot hotel hour hours house how hundred hungry hurry hurt husband ice idea imagine important improve
inside instead interested interesting into island its jail job join joke judge jump just keep kept key kick kid
kidding kids kind king kiss knew know known knows ladies lady land last late later laugh law lawyer lead learn
least leave leaving left less let letter library lie life light like liked likes line list listen little live
lives living long longer look looked looking looks lose lost lot love loved lovely loves luck lucky lunch lying
machine mad made major make makes making mama man many mark marriage married marry master matter may maybe mean
means meant meet meeting men mess message met middle might miles million mind mine minute minutes miss missed
missing mistake moment money month months more morning most mother mouth move movie moving much music must
myself name named naughty near need needed needs neighbour never new news next nice night nobody none not
nothing now number off offer office officer old once one ones only ooh open order other ought our out outside
over owe own paid pain paper parent parents park part partner party pass past path pay people perfect perhaps
person phone pick picture piece place plan plane plant play playing please pleasure point police poor possible
power present pretty probably problem problems promise protect proud prove public pull push put question
questions quick quiet quit quite radio ran rather ray read ready real really reason receive record red remember
report rest return rich ride right ring road rock room rough run running safe said same save saved saw say
saying says scared school seat second seconds secret see seeing seem seems seen sell send sense sent sentence
separate service set seven shall she ship shoes shoot short should show shut sick side sign simple since sing
single sister sit sitting six sleep slow small smart smell some somebody someone something sometimes somewhere
son song soon sorry sort soul sound sounds speak speaking special spend spent stand standing star start started
starting state station stay step stick still stop stopped store story straight strange street strong stuff such
sugar summer suppose supposed sure surprise swear sweet swimming table take taken takes taking talk talked
talking teach team tell telling ten terrible test than thank thanks that the their them then there these they
thing things think thinking thinks third this those though thought three through throw till time times tired
today together told tomorrow tongue tonight too took top touch town train tried trip trouble truck true trust
truth try trying turn turned two uncle under understand unless until upset upstairs use used usually very voice
wait waiting wake walk walking wall want wanted wants war was watch watching water way wear wearing wedding week
weeks weird welcome well went were what when where which while white who whole whose why wife wild will win
window wish with without woman women won wonder wonderful word words work worked working works world worried
worry worse worth would write writing wrong wrote year years yes yesterday yet you young your yours yourself
`

export const COMMON_WORDS: readonly string[] = WORDS.trim().split(/\s+/)
